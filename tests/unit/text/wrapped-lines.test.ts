import { describe, expect, it } from 'vitest';
import { tokenise } from '../../../src/text/tokens';
import { unwrapped } from '../../../src/text/wrapped-lines';

const lines = (text: string): number =>
  unwrapped(text, tokenise(text)).filter(({ kind }) => kind === 'break').length + 1;

describe('lines that were cut for their length', () => {
  it.each([
    "It isn't a\nzigzag",
    'there is no\nlamp',
    'nor does it\ndrop the feed',
    'the class\n66 bobbin',
    'die Maschine ist\naus Guss',
    'elle est en fonte avec\nune lampe',
  ])('are one: %j', (text) => expect(lines(text)).toBe(1));

  it.each([
    'Reverse: no\nlamp: yes',
    'with case\nblack',
    'a\n\nnew start',
    'It is a\n- zigzag',
    'it is the\nCressiter',
    'cast iron\nzigzag',
    'class 15\n12 kg',
  ])('stay apart where a line may end so: %j', (text) => expect(lines(text)).toBe(text.includes('\n') ? 2 : 1));
});
