import { describe, expect, it } from 'vitest';
import { audit } from '../../src/engine';
import { readDraft } from '../../src/listing/draft';
import type { Draft } from '../../src/listing/types';
import { AS_OF, demoKnowledge, labelled } from '../corpus/labelled';

const known = demoKnowledge();
/** Every advert in the long run; a part of them, spread over all, in the usual one. */
const adverts = labelled('tuned').filter((_, i) => process.env.BEDPLATE_LONG || i % 5 === 0);

/** Which findings there are, without their places and words. */
const findings = (draft: Draft): string[] =>
  audit(readDraft(draft), known, { asOf: AS_OF })
    .findings.map(({ check, standing, attribute }) => `${check} ${standing} ${attribute}`)
    .sort();

/** The adverts whose findings a change of their description changes. */
function changedBy(change: (description: string) => string): string[] {
  return adverts.flatMap(({ id, draft }) => {
    const { description } = draft;
    if (!description || change(description) === description) return [];
    const [before, after] = [findings(draft), findings({ ...draft, description: change(description) })];
    const gone = before.filter((one) => !after.includes(one)).map((one) => `-${one}`);
    const come = after.filter((one) => !before.includes(one)).map((one) => `+${one}`);
    return before.join() === after.join() ? [] : [`${id}: ${[...gone, ...come].join(', ')}`];
  });
}

/** Short words stay: capitals are part of a number as it is written ("KD 372118", "1150338 N"). */
const WORD = /(?<![\p{L}\p{M}\p{N}])\p{L}{4,}(?![\p{L}\p{M}\p{N}])/gu;

describe('the same is found, however an advert is written', () => {
  it('with emoji at line ends', () => expect(changedBy((text) => text.replace(/$/gm, ' ✨'))).toEqual([]));
  it('with doubled spaces', () => expect(changedBy((text) => text.replaceAll(' ', '  '))).toEqual([]));
  it('with no-break spaces', () => expect(changedBy((text) => text.replaceAll(' ', '\u00a0'))).toEqual([]));
  it('with a space at each line’s end', () => expect(changedBy((text) => text.replace(/$/gm, ' '))).toEqual([]));
  it('in decomposed letters', () => expect(changedBy((text) => text.normalize('NFD'))).toEqual([]));
  it('with a neighbour’s machine at the end', () =>
    expect(changedBy((text) => `${text}\nMy neighbour has another machine, a modern plastic one.`)).toEqual([]));
});

/**
 * A capital inside a sentence shows a name ("my Wendelow is 9 kg"), so that an advert in one case leaves more open: some
 * of what agreed is no longer told. Nothing may come new, and whatever doesn't hold still doesn't.
 */
describe('nothing else is found, and nothing that doesn’t hold is lost', () => {
  const otherwise = (change: (word: string) => string): string[] =>
    changedBy((text) => text.replace(WORD, change)).filter(
      (line) => !/^t\d+: (?:-[\w-]+ agrees [\w-]+(?:, |$))+$/.test(line),
    );

  it('in small letters', () => expect(otherwise((word) => word.toLowerCase())).toEqual([]));
  it('in capitals', () => expect(otherwise((word) => word.toUpperCase())).toEqual([]));
});
