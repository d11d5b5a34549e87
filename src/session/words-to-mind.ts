import { attributeOf } from '../audit/attribute-of';
import { say } from '../audit/words';
import { judge } from '../identify/judge';
import { allowedBy } from '../pack/compile/facts';
import type { Allowed, Knowledge, ModelKnown } from '../pack/knowledge';
import type { Phrase } from '../pack/schema/parts';
import type { Wording } from '../pack/schema/wording';
import { packsOfKind } from './packs-of-kind';

/** Words of adverts, and what to mind of them. */
export interface MindedWords {
  /** As adverts write it. */
  words: string;
  text: string;
}

/** More than these are read by nobody. */
const MOST = 4;

/**
 * Words that are not to be believed of a kind: first those that what is known of it contradicts, then those that are
 * true of none, then those that say less than they seem to.
 */
export function wordsToMind(model: ModelKnown, knowledge: Knowledge): MindedWords[] {
  const ranked = packsOfKind(model, knowledge).flatMap(({ id, wording }) =>
    wording.map((entry) => ({ entry, rank: rankOf(entry, id) })),
  );
  const found = [0, 1, 2].flatMap((wanted) =>
    ranked.flatMap(({ entry, rank }) => (rank === wanted ? minded(entry) : [])),
  );
  // A club may weigh a word that the trade weighs too: the first of them is the more telling one.
  return found.filter(({ words }, i) => found.findIndex((one) => one.words === words) === i).slice(0, MOST);

  function rankOf({ means, mind, never }: Wording, pack: string): number {
    if (means && 'attribute' in means) {
      const attribute = attributeOf(means.attribute, pack, knowledge);
      const allowed: Allowed | null | undefined =
        'is' in means
          ? attribute && allowedBy(means.is, attribute)
          : {
              kind: 'range',
              from: means.atLeast ?? Number.NEGATIVE_INFINITY,
              to: means.atMost ?? Number.POSITIVE_INFINITY,
            };
      const facts = ((attribute && model.facts.get(attribute.ref)) ?? []).filter(({ always }) => always);
      return attribute && allowed && judge({ allowed, denied: false }, attribute, facts) === 'refutes' ? 0 : 3;
    }
    if (never !== undefined) return 1;
    return mind !== undefined && !means ? 2 : 3;
  }
}

function minded({ words, never, mind }: Wording): MindedWords[] {
  const text = never ?? mind;
  const first = words.find((phrase) => isEnglish(phrase)) ?? words[0];
  if (text === undefined || first === undefined) return [];
  return [{ words: typeof first === 'string' ? first : first.text, text: say(text) }];
}

function isEnglish(phrase: Phrase): boolean {
  return typeof phrase === 'string' || phrase.lang === undefined || /^en\b/.test(phrase.lang);
}
