import { describe, expect, it } from 'vitest';
import { explainText } from '../../../src/cli/explain-text';
import { widthOf } from '../../../src/cli/layout';
import { explained } from '../audit/explain/support';

const title = 'Grindlewade Cressiter sewing machine';
const textOf = (description: string, width = 80): string => explainText(explained({ title, description }), width);

describe('an explanation for a terminal', () => {
  it('tells field by field each phrase, its clause, how it was read and what came of it', () => {
    expect(textOf('It sews well, but it is not aluminium.')).toContain(
      [
        'description',
        '-----------',
        '  28-37     “aluminium”: frame: aluminium [trade]',
        '            in: “but it is not aluminium.”',
        '            denied, of this thing: “is not”',
        '            -> Agrees (claim-fact)',
      ].join('\n'),
    );
  });

  it('says why nothing came of words', () => {
    const text = textOf('The table is cast iron. I also have a Wendelow. It has a zigzag foot.');
    expect(text).toContain('said, of something else: a feature of a part, “table”');
    expect(text).toContain('-> nothing: said of something else');
    expect(text).toContain('-> nothing: it is part of a longer phrase, “zigzag foot”');
  });

  it('says why a finding is softer than “doesn’t hold”, and names those that rest on no words', () => {
    const text = textOf('Perhaps a zigzag.');
    expect(text).toContain('-> Not shown yet (claim-fact; the advert only guesses)');
    expect(text).toMatch(
      /Findings that rest on none of these words\n-+\n(?: {2}.*\n)* {2}Not shown yet \(missing:serial/,
    );
  });

  it('is no wider than it may be, and shows nothing that moves a cursor', () => {
    const text = textOf(`It has a very ${'long '.repeat(40)} zigzag \u001b[2J\u202e foot, cast iron.`, 72);
    expect(text.split('\n').every((line) => widthOf(line) <= 72)).toBe(true);
    expect(text).not.toMatch(/[\u001b\u202e]/);
  });

  it('says so where no words are known', () =>
    expect(explainText(explained({ title: 'Garden bench' }), 80)).toContain('None of the advert’s words'));
});
