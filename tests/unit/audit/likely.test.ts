import { describe, expect, it } from 'vitest';
import { audit, compile } from '../../../src/engine';
import { listingByHand } from '../../../src/listing/by-hand';
import { readDraft } from '../../../src/listing/draft';
import type { Draft } from '../../../src/listing/types';
import { AS_OF } from '../../corpus/labelled';
import { packOf } from '../../corpus/packs';
import { knowledgeOf } from '../identify/support/small';
import { cressiter, demo } from './support/demo';

const of = (draft: Draft, answers: Record<string, string | boolean | null> = {}) =>
  audit(readDraft(draft), demo, { asOf: AS_OF, answers });
const tradeAlone = compile([packOf('src/pack/shipped/trade.json')]);
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
    expect(first?.against[0]?.text).toBe('Frame: you saw aluminium. Known of this one: cast iron.');
    for (const { bits } of first!.for) expect(bits).toBeGreaterThan(0);
    for (const { bits } of first!.against) expect(bits).toBeLessThan(0);
  });
  it('what the candidate bears out says why it speaks against it all the same', () => {
    const { likely } = of({ title: 'Free arm zigzag sewing machine', description: 'The body is aluminium.' });
    const borneOut = likely
      .flatMap((one) => one.against)
      .filter(({ text }) => /^Frame: the advert says aluminium\. (Known|Usually so) of this one too\./.test(text));
    expect(borneOut.length).toBeGreaterThan(0);
    for (const { text } of borneOut) expect(text).toMatch(/ of this one too\. The next one fits this better still\.$/);
  });
  it('the name is quoted that decided', () => {
    const [first] = of({ ...sold, title: 'Grindlewade sewing machine, the Cressiter' }).likely;
    expect(first?.for.map(({ text }) => text)).toContain('The advert calls it “Cressiter”.');
  });

  it('a slip of the number is called so, not a number outside of its blocks', () => {
    const [first] = of({ ...sold, serialText: 'KD3721I8' }).likely;
    expect(first?.for.map(({ text }) => text)).toContain(
      'Read as KD372118, the serial KD3721I8 is one of those allotted to it.',
    );
  });
  it('its own name is never what speaks against it', () => {
    const { likely } = of({ ...sold, serialText: 'KD 131206' });
    expect(likely[0]?.label).toBe('Grindlewade Cressiter');
    expect(likely[0]?.against.map(({ text }) => text).join()).not.toContain('calls it');
  });
  it('another’s name that speaks for it says why', () => {
    const draft = cressiter('It is aluminium and weighs 9.3 kg.', { serialText: 'KD 330715' });
    expect(of(draft).likely[0]).toMatchObject({ label: 'Grindlewade Wendelow' });
    expect(of(draft).likely[0]?.for.map(({ text }) => text)).toContain(
      'The advert calls it “Cressiter”, which this one is sometimes taken for.',
    );
  });
  it('nobody’s guess of how many of a kind were made is told as a number', () => {
    const { likely } = of({ title: 'Old treadle sewing machine', language: 'en' });
    const told = likely.filter(({ kind }) => kind === 'type').flatMap((one) => [...one.for, ...one.against]);
    expect(told.some(({ text }) => text.startsWith('More of this kind turn up'))).toBe(true);
    expect(told.map(({ text }) => text).join()).not.toMatch(/were made/);
  });
  it('what is known under a condition is told with it', () =>
    expect(
      of(cressiter('Sews well.'), { 'trade/drop-feed': true })
        .likely.flatMap((one) => [...one.for, ...one.against])
        .map(({ text }) => text)
        .join(),
    ).toContain('no (made until 1952); yes (made from 1953 on)'));

  it('what rests on the number alone says so, and what doesn’t doesn’t', () => {
    const wendelow: Draft = { title: 'Grindlewade Wendelow', language: 'en', serialText: 'KD 318472' };
    expect(of(wendelow).likely[0]).toMatchObject({ label: 'Grindlewade Cressiter', restsOn: 'serial' });
    expect(of({ ...sold, serialText: 'KD 131206' }).likely[0]?.restsOn).toBeNull();
    expect(of(sold).likely.map(({ restsOn }) => restsOn)).toEqual(of(sold).likely.map(() => null));
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

describe('the number itself', () => {
  const odd: Draft = { title: 'Grindlewade Wendelow', language: 'en', serialText: 'KD 318472' };
  const KEY = 'serial';

  it('comes first where it is another model’s than the advert names', () => {
    const [first] = of(odd).nextEvidence;
    expect(first).toMatchObject({ attribute: KEY, effort: 'photo', ask: expect.stringMatching(/serial number/) });
    expect(first?.bits).toBeGreaterThan(0);
    expect(first?.options.map(({ value }) => value)).toEqual(['KD318472', 'other']);
  });
  it('and where a complete table leaves it out', () =>
    expect(of({ ...sold, serialText: 'KD 297310' }).nextEvidence[0]?.attribute).toBe(KEY));
  it('is what is left to look at where all is as good as sure', () =>
    expect(of({ ...sold, serialText: 'KD 131206' }).nextEvidence.map(({ attribute }) => attribute)).toEqual([KEY]));
  it('seen as said makes it surer; seen otherwise, the advert’s words decide', () => {
    const share = (answer: string): number =>
      of(odd, { [KEY]: answer }).likely.find(({ label }) => label === 'Grindlewade Cressiter')?.probability ?? 0;
    const before = of(odd).likely[0]!.probability;
    expect(share('KD318472')).toBeGreaterThan(before);
    expect(of(odd, { [KEY]: 'other' }).likely[0]?.label).toBe('Grindlewade Wendelow');
  });
  it('is not asked again, and what it may be a slip for is offered', () => {
    expect(of(odd, { [KEY]: null }).nextEvidence.map(({ attribute }) => attribute)).not.toContain(KEY);
    const [slip] = of({ ...sold, serialText: 'KD3721I8' }).nextEvidence;
    expect(slip?.options.map(({ value }) => value)).toEqual(['KD3721I8', 'KD372118', 'other']);
  });
  it('is nothing where no pack has numbers', () => {
    const { nextEvidence } = audit(readDraft({ title: 'Old sewing machine', serialText: '12345' }), tradeAlone, {
      asOf: AS_OF,
    });
    expect(nextEvidence.map(({ attribute }) => attribute)).not.toContain(KEY);
  });
});

it('of a thing described by hand it is not the advert that says', () => {
  const { likely } = audit(listingByHand({ what: 'sewing machine', text: 'full size' }), demo, { asOf: AS_OF });
  const told = likely.flatMap((one) => [...one.for, ...one.against]).map(({ text }) => text);
  expect(told.some((text) => text.startsWith('Size: you say full size.'))).toBe(true);
  expect(told.join()).not.toContain('advert says');
});

it('whoever has it in hand is right more often than a seller', () => {
  const text = 'round bobbin';
  const listing = { title: 'sewing machine', description: text, language: 'en' };
  const share = (all: readonly { label: string; probability: number }[]): number =>
    all.filter(({ label }) => label.includes('shuttle')).reduce((sum, { probability }) => sum + probability, 0);
  const byHand = audit(listingByHand({ what: 'sewing machine', text }), tradeAlone, { asOf: AS_OF });
  expect(share(byHand.likely)).toBeLessThan(share(audit(readDraft(listing), tradeAlone, { asOf: AS_OF }).likely));
});

describe('what needs no question', () => {
  const asked = (draft: Draft) => of(draft).nextEvidence.map(({ attribute }) => attribute);
  it('what drives it, where the advert says so: nobody errs there', () => {
    expect(asked({ title: 'Old treadle sewing machine', language: 'en' })).not.toContain('trade/drive');
    expect(asked({ title: 'Old sewing machine', language: 'en' })).not.toEqual([]);
  });
  it('but what sellers copy from each other is worth seeing', () =>
    expect(asked({ title: 'Vibrating shuttle sewing machine', language: 'en' })).toContain('trade/mechanism'));
  it('whoever has it in hand isn’t asked what they have just said', () => {
    const byHand = (text: string) => audit(listingByHand({ what: 'sewing machine', text }), demo, { asOf: AS_OF });
    expect(byHand('').nextEvidence.map(({ attribute }) => attribute)).toContain('trade/size');
    expect(byHand('full size').nextEvidence.map(({ attribute }) => attribute)).not.toContain('trade/size');
  });
});
