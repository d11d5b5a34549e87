import nlp from 'compromise';
import { describe, expect, it } from 'vitest';
import { readMarked } from './marked-sentence';

/**
 * A general-purpose English language library, compromise (npm registry): it finds the verbs of a sentence and says of
 * each whether it is negated. Held against our denials on every sentence that these frames make of these features. Where
 * the two differ, the frame stands below with its reason; any other difference fails.
 */
const FEATURES = ['{cast iron}', 'a {zigzag}', '{drop feed}', 'a {free arm}', 'a {rotary hook}', '{heavy}'];

const FRAMES = [
  'It is {}.',
  'It is not {}.',
  'It isn’t {}.',
  'It was not {}.',
  'It was never {}.',
  'It has {}.',
  'It does not have {}.',
  'It doesn’t have {}.',
  'It did not have {}.',
  'It never had {}.',
  'It has no {}.',
  'It does {}.',
  'It cannot do {}.',
  'It can’t do {}.',
  'It will not do {}.',
  'It comes with {}.',
  'It did not come with {}.',
  'It comes without {}.',
  'It lacks {}.',
  'There is {}.',
  'There is no {}.',
  'There isn’t {}.',
  'The machine is {}.',
  'The machine is not {}.',
  'The machine has {}.',
  'The machine does not have {}.',
  'Not only {}, it is quick.',
  'It is not only {}.',
  'It is {} and it does not leak.',
  'It does not leak and it is {}.',
  'It is not pretty but {}.',
  'I do not think it is {}.',
  'It may not be {}.',
  'Is it not {}?',
];

/** Frame -> what each of the two says, and why it is right that they differ. */
const DIFFERENCES: Record<string, string> = {
  'It has no {}.': 'compromise negates verbs; here the noun is negated, and the feature denied all the same',
  'It comes without {}.': 'the same: "without" is no negated verb',
  'It lacks {}.': 'the same: the verb itself denies',
  'It is {} and it does not leak.': 'compromise tells of a sentence that some verb in it is negated, not of what',
  'It does not leak and it is {}.': 'the same',
  'It is not pretty but {}.': 'the same: "but" ends the denial',
  'I do not think it is {}.': 'the thinking is negated; of the feature it is a guess',
  'It may not be {}.': 'negated and unsure: a guess, which is held against nothing',
  'Is it not {}?': 'a question claims nothing',
};

/** These take no article: "no zigzag". */
const BARE = /^(?:There isn|There is no|It has no)/;

const sentences = FRAMES.flatMap((frame) =>
  FEATURES.map((feature) => {
    const words = BARE.test(frame) ? feature.replace(/^a /, '') : feature;
    return { frame, marked: frame.replace('{}', () => words) };
  }),
);

const ours = (marked: string): boolean => readMarked(marked).stance === 'denies';
const theirs = (marked: string): boolean =>
  nlp(marked.replace(/[{}]/g, '').replaceAll('’', "'")).verbs().isNegative().found;

describe('negation, beside a general language library', () => {
  it('differs on no frame but those that are explained', () => {
    const differing = new Set(
      sentences.flatMap(({ frame, marked }) => (ours(marked) === theirs(marked) ? [] : [frame])),
    );
    expect([...differing].sort()).toEqual(Object.keys(DIFFERENCES).sort());
  });

  it('agrees on most, denials and others', () => {
    const agreed = sentences.filter(({ frame }) => !(frame in DIFFERENCES));
    expect(agreed.filter(({ marked }) => ours(marked)).length).toBeGreaterThan(80);
    expect(agreed.filter(({ marked }) => !ours(marked)).length).toBeGreaterThan(40);
  });
});
