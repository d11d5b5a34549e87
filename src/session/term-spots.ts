import { say } from '../audit/words';
import type { Knowledge } from '../pack/knowledge';
import { PhraseIndex } from '../text/phrases';
import { tokenise } from '../text/tokens';
import type { TermSpot } from './words';

/** Of longer texts the beginning is searched, which is all of them that is shown. */
const LONGEST = 600;

interface TermKnown {
  /** "packId/termId" */
  ref: string;
  pack: string;
  explain: string;
}

/** Made once for as long as the packs stay what they are. */
const indexes = new WeakMap<Knowledge, PhraseIndex<TermKnown>>();

/**
 * Where words of the trade stand in texts that are shown, each word once in each text, the longer one where two begin
 * at the same place: "bobbin case", not "bobbin". Texts without any are left out.
 * @param speaking ids of the packs whose words count: a typewriter's carriage explains nothing of a sewing machine
 */
export function termSpots(
  texts: Iterable<string>,
  knowledge: Knowledge,
  speaking: ReadonlySet<string>,
): Map<string, TermSpot[]> {
  const index = indexOf(knowledge);
  const spots = new Map<string, TermSpot[]>();
  for (const text of new Set(texts)) {
    const here = spotsIn(text, index, speaking);
    if (here.length > 0) spots.set(text, here);
  }
  return spots;
}

function spotsIn(text: string, index: PhraseIndex<TermKnown>, speaking: ReadonlySet<string>): TermSpot[] {
  const spots: TermSpot[] = [];
  const told = new Set<string>();
  let free = 0;
  for (const { start, end, value } of index.search(tokenise(text.slice(0, LONGEST)))) {
    if (start < free || !speaking.has(value.pack)) continue;
    free = end;
    if (told.has(value.ref)) continue;
    told.add(value.ref);
    spots.push({ start, end, explain: value.explain });
  }
  return spots;
}

function indexOf(knowledge: Knowledge): PhraseIndex<TermKnown> {
  const there = indexes.get(knowledge);
  if (there) return there;
  const index = new PhraseIndex<TermKnown>();
  for (const pack of knowledge.packs) {
    for (const { id, label, explain, words = [] } of pack.terms) {
      const term = { ref: `${pack.id}/${id}`, pack: pack.id, explain: say(explain) };
      for (const word of new Set([say(label), ...words])) index.add(word, term);
    }
  }
  indexes.set(knowledge, index);
  return index;
}
