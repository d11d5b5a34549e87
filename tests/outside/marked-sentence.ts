import { textPart, tokenAt } from '../../src/claims/part-text';
import { type StanceOf, StanceReader } from '../../src/claims/stance';

/** How the words between braces are read, by triggers and by how the words stand. */
export function readMarked(marked: string): StanceOf {
  const text = marked.replace(/[{}]/g, '');
  const part = textPart('description', text);
  const first = tokenAt(part, marked.indexOf('{'));
  const last = tokenAt(part, marked.indexOf('}') - 2);
  return new StanceReader(part, new Set(['en'])).at(first, last);
}
