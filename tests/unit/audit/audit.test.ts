import { describe, expect, it } from 'vitest';
import { auditOf, cressiter } from './support/demo';

const lines = (title: string, description: string): string[] =>
  auditOf({ title, description, language: 'en' }).findings.map(({ check, standing }) => `${check} ${standing}`);

describe('which checks an advert is held to', () => {
  it('a part makes no claim about a machine', () => {
    const found = lines('Bobbin case for Grindlewade Cressiter', 'Aluminium. Zigzag. Made in 1901.');
    expect(found.filter((line) => !/^(fits|caution) /.test(line))).toEqual([]);
  });
  it.each(['Wanted: Grindlewade Cressiter with zigzag', 'Sewing machine repair service, zigzag Cressiter'])(
    'nothing is held against: %s',
    (title) => expect(lines(title, 'Zigzag.')).toEqual([]),
  );
  it('a lot is only cautioned', () =>
    expect(new Set(lines('Job lot of sewing machines', 'Cressiter with zigzag, with motors.'))).toEqual(
      new Set(['caution caution']),
    ));
  it('an advert that no pack covers is left alone', () =>
    expect(
      auditOf({ title: 'Oak table', description: 'Cast iron legs. Victorian. Rare.', language: 'en' }),
    ).toMatchObject({
      findings: [],
      packs: [],
      claimedModel: null,
    }));
});

describe('what is shown first', () => {
  it('what doesn’t hold, what isn’t shown, what to mind, what agrees', () => {
    const order = auditOf(cressiter('Zigzag. Class 15 bobbins. Heavy duty. I can post it.')).findings.map(
      (f) => f.standing,
    );
    expect([...new Set(order)]).toEqual(['disproved', 'unproved', 'caution', 'agrees']);
    expect(order).toEqual([...order].sort((a, b) => RANK.indexOf(a) - RANK.indexOf(b)));
  });

  it('at most three that are not shown yet, those with the advert’s words first', () => {
    const found = auditOf(
      cressiter('I think it does zigzag. I think it has an alloy body. I think it takes class 66. I think low shank.'),
    ).findings.filter(({ standing }) => standing === 'unproved');
    expect(found).toHaveLength(3);
    expect(found.every(({ said }) => said.length > 0)).toBe(true);
  });

  it('two ways to say what agrees are one finding', () => {
    const agrees = auditOf(cressiter('Cast iron body, not aluminium.')).findings.filter(
      ({ standing, attribute }) => standing === 'agrees' && attribute === 'frame',
    );
    expect(agrees).toHaveLength(1);
    expect(agrees[0]?.said.map(({ quote }) => quote)).toEqual(['Cast iron body', 'not aluminium']);
  });
});

const RANK = ['disproved', 'unproved', 'caution', 'agrees'];

describe('the rest of the answer', () => {
  it('names the model and where the advert names it', () => {
    const { claimedModel, claimed } = auditOf(cressiter('Not a Wendelow.'));
    expect(claimedModel).toBe('grindlewade-circle/cressiter');
    expect(claimed.map(({ model, family, quote, stance }) => [model ?? family, quote, stance])).toEqual([
      ['grindlewade-circle/grindlewade', 'Grindlewade', 'says'],
      ['grindlewade-circle/cressiter', 'Cressiter', 'says'],
      ['grindlewade-circle/wendelow', 'Wendelow', 'denies'],
    ]);
  });
  it('names only the packs that spoke', () =>
    expect(auditOf({ title: 'Old sewing machine', language: 'en' }).packs.map(({ id }) => id)).toEqual(['trade']));
});
