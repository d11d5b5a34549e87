import { describe, expect, it } from 'vitest';
import { readClaims } from '../../src/claims/read';
import { audit } from '../../src/engine';
import { readDraft } from '../../src/listing/draft';
import type { Draft } from '../../src/listing/types';
import { AS_OF, demoKnowledge, labelled } from '../corpus/labelled';

const known = demoKnowledge();
/** Every advert in the long run; a part of them, spread over all, in the usual one. */
const adverts = labelled('tuned/grindlewade-circle').filter((_, i) => process.env.BEDPLATE_LONG || i % 20 === 0);

/** Which findings there are, without their places and words. */
const findings = (draft: Draft): string[] =>
  audit(readDraft(draft), known, { asOf: AS_OF })
    .findings.map(({ check, standing, attribute }) => `${check} ${standing} ${attribute}`)
    .sort();

/** The adverts whose findings a change of their description changes. */
function changedBy(change: (description: string) => string, among = adverts): string[] {
  return among.flatMap(({ id, draft }) => {
    const { description } = draft;
    if (!description || change(description) === description) return [];
    const [before, after] = [findings(draft), findings({ ...draft, description: change(description) })];
    const gone = before.filter((one) => !after.includes(one)).map((one) => `-${one}`);
    const come = after.filter((one) => !before.includes(one)).map((one) => `+${one}`);
    return before.join() === after.join() ? [] : [`${id}: ${[...gone, ...come].join(', ')}`];
  });
}

/** What is added to them is English: to others it would add a language. */
const english = adverts.filter(({ draft }) => {
  const languages = readClaims(readDraft(draft), known).languages;
  return languages.size === 1 && languages.has('en');
});

/** Short words stay: capitals are part of a number as it is written ("KD 372118", "1150338 N"). */
const WORD = /(?<![\p{L}\p{M}\p{N}])\p{L}{4,}(?![\p{L}\p{M}\p{N}])/gu;

/** Every advert is audited twice, and twice more; on a busy machine that takes its time. */
const LONG_ENOUGH = { timeout: 240_000 };

describe('the same is found, however an advert is written', LONG_ENOUGH, () => {
  it('with emoji at line ends', () => expect(changedBy((text) => text.replace(/$/gm, ' ✨'))).toEqual([]));
  it('with doubled spaces', () => expect(changedBy((text) => text.replaceAll(' ', '  '))).toEqual([]));
  it('with no-break spaces', () => expect(changedBy((text) => text.replaceAll(' ', '\u00a0'))).toEqual([]));
  it('with a space at each line’s end', () => expect(changedBy((text) => text.replace(/$/gm, ' '))).toEqual([]));
  it('with emoji before each line', () => expect(changedBy((text) => text.replace(/^(?=.)/gm, '🧵 '))).toEqual([]));
  it('with line ends of another system', () => expect(changedBy((text) => text.replaceAll('\n', '\r\n'))).toEqual([]));
  it('with curly apostrophes', () => expect(changedBy((text) => text.replaceAll("'", '’'))).toEqual([]));
  it('with straight apostrophes', () => expect(changedBy((text) => text.replaceAll('’', "'"))).toEqual([]));
  it('in decomposed letters', () => expect(changedBy((text) => text.normalize('NFD'))).toEqual([]));
  it.each([
    'My neighbour has another machine, a modern plastic one.',
    'My sister has one in aluminium with drop feed, made in 1975, which weighs 6 kg.',
  ])('with another’s machine before or after: %s', (other) => {
    expect(changedBy((text) => `${text}\n${other}`, english)).toEqual([]);
    expect(changedBy((text) => `${other}\n${text}`, english)).toEqual([]);
  });
});

/**
 * A capital inside a sentence shows a name ("my Wendelow is 9 kg"), so that an advert in one case leaves more open: some
 * of what agreed is no longer told. Nothing may come new, and whatever doesn't hold still doesn't.
 */
describe('nothing else is found, and nothing that doesn’t hold is lost', LONG_ENOUGH, () => {
  const otherwise = (change: (word: string) => string): string[] =>
    changedBy((text) => text.replace(WORD, change)).filter(
      (line) => !/^[a-z]+\d+: (?:-[\w-]+ agrees [\w-]+(?:, |$))+$/.test(line),
    );

  it('in small letters', () => expect(otherwise((word) => word.toLowerCase())).toEqual([]));
  it('in capitals', () => expect(otherwise((word) => word.toUpperCase())).toEqual([]));
});
