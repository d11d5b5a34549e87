import type { Hit } from './hits';
import { hasNameCapital, type TextPart, tokenAt } from './part-text';
import type { NameClaim } from './reading';

/**
 * Words of the title's names, and those that look like a name and that no pack knows: what the seller calls the thing.
 * Folded. A title all in capitals, or with a capital at each word, tells names from nothing.
 */
export function titleNames(
  title: TextPart | null,
  hits: readonly Hit[],
  names: readonly NameClaim[],
): ReadonlySet<string> {
  if (!title) return NONE;
  // "Maker Name" in a title, "this Name" in the text.
  const known = names.flatMap(({ field, of, start, end }) =>
    field === 'title' && 'model' in of ? title.tokens.slice(tokenAt(title, start), tokenAt(title, end - 1) + 1) : [],
  );
  const called = new Set(known.flatMap(({ kind, folded }) => (kind === 'word' && folded.length > 3 ? [folded] : [])));
  const words: number[] = [];
  title.tokens.forEach(({ kind, folded }, at) => {
    if (kind === 'word' && folded.length > 3) words.push(at);
  });
  const capital = words.filter((at) => hasNameCapital(title, at));
  if (capital.length * 2 > words.length) return called;
  const unknown = capital.filter((at) => !hits.some((hit) => hit.firstToken <= at && hit.lastToken >= at));
  for (const at of unknown) called.add(title.tokens[at]!.folded);
  return called;
}

const NONE: ReadonlySet<string> = new Set();
