import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Pack } from '../../../src/pack/schema/index';
import { tellChanges, valueTold } from '../../../src/session/change-told';
import { diffPacks } from '../../../src/sharing/propose/diff-packs';

const demo = JSON.parse(readFileSync('fixtures/packs/grindlewade-circle.json', 'utf8')) as Pack;
const trade = JSON.parse(readFileSync('src/pack/shipped/trade.json', 'utf8')) as Pack;
const told = (before: Pack, after: Pack) => tellChanges(diffPacks(before, after), before, after);
const [model, ...models] = demo.models!;

describe('what changed between two editions', () => {
  it('is nothing where only the edition’s number grew', () => {
    const { counts, entries } = told(demo, { ...demo, about: { ...demo.about, edition: demo.about.edition + 1 } });
    expect([counts, entries]).toEqual([{ added: 0, changed: 0, removed: 0, moved: 0 }, []]);
  });

  it('is said by the names that people have for entries', () => {
    const added = { id: 'wendle', label: 'A Wendle', names: ['Wendle'] };
    const { entries, counts } = told(demo, { ...demo, models: [...models, added] });
    expect(counts).toEqual({ added: 1, changed: 0, removed: 1, moved: 0 });
    expect(entries.map(({ kind, name }) => [kind, name])).toEqual([
      ['removed', model!.label],
      ['added', 'A Wendle'],
    ]);
  });

  it('says what a field was and is', () => {
    const facts = { ...model!.facts, weight: { is: { from: 11, to: 13 } }, stitch: undefined } as never;
    const { entries } = told(demo, { ...demo, models: [{ ...model!, facts, number: 7 }, ...models] });
    expect(entries).toHaveLength(1);
    expect(entries[0]?.fields).toContainEqual({ field: 'number', was: '142000', now: '7' });
    expect(entries[0]?.fields).toContainEqual({ field: 'weight', was: '11.2 to 12', now: '11 to 13' });
    expect(entries[0]?.fields).toContainEqual({ field: 'stitch', was: 'straight-only', now: null });
  });

  it('calls runs by their numbers and bands by their model', () => {
    const runs = demo.serials!.runs;
    const last = [...runs.last.slice(0, -1), '999999'];
    const [band, ...bands] = demo.prices!.bands!;
    const { entries } = told(demo, {
      ...demo,
      serials: { ...demo.serials!, runs: { ...runs, last } },
      prices: { ...demo.prices!, bands: [{ ...band!, low: 1 }, ...bands] },
    });
    const names = entries.map(({ part, name }) => `${part}: ${name}`);
    expect(names).toContain(`serials.runs: ${runs.first.at(-1)} to 999999`);
    expect(names.join('\n')).toContain(demo.models!.find(({ id }) => id === band!.model)?.label);
  });

  it('is cut where nobody would read on, and says how much is left', () => {
    const many = Array.from({ length: 500 }, (_, i) => ({ id: `m-${i}`, label: `M ${i}`, names: [`M ${i}`] }));
    const { entries, more, counts } = told(demo, { ...demo, models: [...demo.models!, ...many] });
    expect(entries.length + more).toBe(500);
    expect(entries.length).toBeLessThan(500);
    expect(counts.added).toBe(500);
  });
});

describe('a value in words', () => {
  const frame = trade.attributes!.find(({ id }) => id === 'frame')!;
  const weight = trade.attributes!.find(({ kind }) => kind === 'measure')!;

  it.each([
    [true, undefined, 'yes'],
    [{ is: 'cast-iron', holds: 'usually' }, undefined, 'usually cast-iron'],
    [[1, 2], undefined, '1, 2'],
    [{ from: 3 }, undefined, '3 or more'],
    [{ to: 3 }, undefined, '3 or less'],
    [null, undefined, 'null'],
  ] as const)('%j', (value, attribute, expected) => {
    expect(valueTold(value as never, attribute)).toBe(expected);
  });

  it('has the label of a choice and the unit of a measure', () => {
    if (frame.kind !== 'choice' || weight.kind !== 'measure') throw new Error('another kind');
    expect(valueTold('cast-iron', frame)).not.toBe('cast-iron');
    expect(valueTold({ from: 1, to: 2 }, weight)).toBe(`1 to 2 ${weight.unit}`);
  });
});
