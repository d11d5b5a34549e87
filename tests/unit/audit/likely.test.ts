import { describe, expect, it } from 'vitest';
import { audit } from '../../../src/engine';
import { readDraft } from '../../../src/listing/draft';
import type { Draft } from '../../../src/listing/types';
import { AS_OF } from '../../corpus/labelled';
import { knowledgeOf } from '../identify/support/small';
import { cressiter, demo } from './support/demo';

const of = (draft: Draft, answers: Record<string, string | boolean | null> = {}) =>
  audit(readDraft(draft), demo, { asOf: AS_OF, answers });
const sold = cressiter('Cast iron, rotary hook.');

describe('what it most likely is', () => {
  it('at most five of at least one in a hundred, the likeliest first', () => {
    const { likely } = of({ title: 'Old sewing machine', language: 'en' });
    expect(likely.length).toBeLessThanOrEqual(5);
    const shares = likely.map(({ probability }) => probability);
    expect(Math.min(...shares)).toBeGreaterThanOrEqual(0.01);
    expect(shares.reduce((a, b) => a + b, 0)).toBeLessThanOrEqual(1 + 1e-9);
  });
  it('“none” is always among them where it is that likely', () =>
    expect(of({ title: 'Old sewing machine', language: 'en' }).likely.at(-1)).toMatchObject({
      ...{ model: null, kind: 'none', label: 'None of those that the packs know', follows: [] },
    }));
  it('models and types say which they are', () => {
    expect(of(sold).likely[0]).toMatchObject({ model: 'grindlewade-circle/cressiter', kind: 'model' });
    expect(of({ title: 'Old sewing machine', language: 'en' }).likely[0]?.kind).toBe('type');
  });
  it('nothing for what is not a thing on sale, or what no pack covers', () => {
    expect(of({ title: 'Wanted: Grindlewade Cressiter sewing machine', language: 'en' }).likely).toEqual([]);
    expect(of({ title: 'Oak table', language: 'en' })).toMatchObject({ likely: [], nextEvidence: [] });
  });

  it('what speaks for it and against it, in words, the weightiest first', () => {
    const [first] = of({ ...sold, serialText: 'KD 318472' }, { 'trade/frame': 'aluminium' }).likely;
    expect(first?.for[0]?.text).toBe('The serial KD 318472 is one of those allotted to it.');
    expect(first?.against[0]?.text).toBe('You saw: frame: aluminium. Known of it: cast iron.');
    for (const { bits } of first!.for) expect(bits).toBeGreaterThan(0);
    for (const { bits } of first!.against) expect(bits).toBeLessThan(0);
  });
  it('what the candidate bears out says why it speaks against it all the same', () => {
    const { likely } = of({ title: 'Free arm zigzag sewing machine', description: 'The body is aluminium.' });
    const borneOut = likely
      .flatMap((one) => one.against)
      .filter(({ text }) => text.includes('Known of it: aluminium.'));
    for (const { text } of borneOut)
      expect(text).toMatch(/Known of it: aluminium\. The next one fits this better still\.$/);
  });
  it('the name is quoted that decided', () => {
    const [first] = of({ ...sold, title: 'Grindlewade sewing machine, the Cressiter' }).likely;
    expect(first?.for.map(({ text }) => text)).toContain('The advert calls it “Cressiter”.');
  });

  it('what follows: firm facts, usual ones and what depends, each with its source', () => {
    const follows = of(sold).likely[0]!.follows;
    expect(follows.find(({ attribute }) => attribute === 'trade/frame')).toMatchObject({
      ...{ name: 'frame', text: 'cast iron', usually: false },
    });
    expect(follows.filter(({ attribute }) => attribute === 'trade/drop-feed').map(({ text }) => text)).toEqual([
      'no (made until 1952)',
      'yes (made from 1953 on)',
    ]);
    expect(follows.every(({ source }) => source !== null)).toBe(true);
  });
  it('the serial’s run decides what depends', () =>
    expect(
      of({ ...sold, serialText: 'KD 318472' })
        .likely[0]!.follows.filter(({ attribute }) => attribute === 'trade/drop-feed')
        .map(({ text }) => text),
    ).toEqual(['yes']));
});

describe('what would settle it', () => {
  it('asks in the advert’s language, shows places and options in the interface’s', () => {
    const next = of({ title: 'Alte Nähmaschine', language: 'de' }).nextEvidence;
    const stitch = next.find(({ attribute }) => attribute === 'trade/stitch');
    expect(stitch?.ask).toMatch(/^Schwingt die Nadel/);
    expect(stitch?.where).toBe('The hole in the needle plate.');
    expect(stitch?.options.map(({ value, text }) => [value, text])).toEqual([
      ['straight-only', 'straight stitch only'],
      ['zigzag', 'zigzag'],
    ]);
  });
  it('tells two look-alikes apart by what tells them apart', () => {
    // A Cressiter is cast iron, a Wendelow aluminium; little else differs.
    const next = of({ title: 'Grindlewade Wendelow', description: 'Straight stitch, rotary hook.', language: 'en' });
    expect(next.likely.slice(0, 2).map(({ label }) => label)).toContain('Grindlewade Wendelow');
    expect(next.nextEvidence.map(({ attribute }) => attribute)).toContain('trade/frame');
  });
  it('says where to look on this very model', () => {
    const small = knowledgeOf({
      attributes: { a: ['x', 'y'], b: ['x', 'y'] },
      types: [
        { id: 'm', number: 200, facts: { a: 'x', b: 'x' }, where: { a: 'Behind the lid.' } },
        { id: 'n', number: 100, facts: { a: 'y', b: 'y' } },
      ],
    });
    const { nextEvidence } = audit(readDraft({ title: 'gadget' }), small, { asOf: AS_OF });
    const where = Object.fromEntries(nextEvidence.map((one) => [one.attribute, one.where]));
    expect(where).toEqual({ 'small/a': 'Behind the lid.', 'small/b': 'Look at the whole machine.' });
  });
});
