import type { Hit } from './hits';
import { hasNameCapital, type TextPart } from './part-text';

/**
 * Words of the title that look like a name and that no pack knows: what the seller calls the thing ("Thistlemarch").
 * Folded. A title all in capitals, or with a capital at each word, tells names from nothing.
 */
export function titleNames(title: TextPart | null, hits: readonly Hit[]): ReadonlySet<string> {
  if (!title) return NONE;
  const words: number[] = [];
  title.tokens.forEach(({ kind, folded }, at) => {
    if (kind === 'word' && folded.length > 3) words.push(at);
  });
  const capital = words.filter((at) => hasNameCapital(title, at));
  if (capital.length * 2 > words.length) return NONE;
  const unknown = capital.filter((at) => !hits.some((hit) => hit.firstToken <= at && hit.lastToken >= at));
  return new Set(unknown.map((at) => title.tokens[at]!.folded));
}

const NONE: ReadonlySet<string> = new Set();
