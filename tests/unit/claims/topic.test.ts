import { describe, expect, it } from 'vitest';
import { readingOf, short } from './support/reading';

const languageOf = (text: string): string =>
  /\b(?:ist|hat)\b/.test(text) ? 'de' : /\b(?:est|fait)\b/.test(text) ? 'fr' : 'en';

/** What the last sentence says of frame and stitch, in an advert for a Cressiter. */
const says = (description: string): string[] => {
  const last = description.lastIndexOf('. ', description.length - 2);
  const draft = { title: 'Grindlewade Cressiter', description, language: languageOf(description) };
  return short(readingOf(draft).wordings.filter(({ entry, start }) => /^says/.test(entry.id) && start > last));
};

describe('what a sentence goes on about', () => {
  it.each([
    "My sister's was portable. It did zigzag too.",
    'The Bodrannock came later. It does zigzag.',
    'The Bodrannock is the alloy one. That one does zigzag.',
    "My neighbour's is newer. Hers has a zigzag.",
    'The knob is off an old one. It does zigzag.',
    'A bit of history for you: they made it with zigzag.',
    'The ordinary Bodrannock has a lamp and does zigzag.',
    'Often mixed up with the later one, which does zigzag.',
    'ordinary Bodrannocks are portable and do zigzag.',
    'The later Bodrannock Mk II is tan and does zigzag.',
    'About us: we began in a shed. It does zigzag.',
    "I'm keeping my other one because it has zigzag.",
    'My aunt has another one. It is loud. It sews zigzag as well.',
    'Both are old. Only the right one does zigzag.',
    'Meine Schwester hat auch eine. Sie näht Zickzack.',
    'Die meiner Schwester ist neuer. Die hat Zickzack.',
    'Ma sœur a une autre machine. Elle fait le zigzag.',
    'Celle de ma sœur est plus récente. Elle fait le zigzag.',
  ])('another machine: %s', (text) => expect(says(text)).toEqual([expect.stringMatching(/ \(other\)$/)]));

  it.each([
    'The Bodrannock came later. This one is cast iron.',
    "My sister's was portable. Mine is cast iron.",
    'My aunt has another one. The Cressiter is cast iron.',
    "My sister's was portable. It did more. This one is old. It is cast iron.",
    'My mother had this machine from new. It is cast iron.',
    "My grandmother's machine. It is cast iron.",
    'Meine Schwester hat auch eine. Diese hier ist aus Gusseisen.',
    'Celle de ma sœur est plus récente. Celle-ci est en fonte.',
    "My sister's was portable.\nIt is cast iron.",
  ])('this thing again: %s', (text) => expect(says(text)).toEqual([expect.not.stringMatching(/\(/)]));
});
