import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { KeptLayer } from '../../../../src/keep/schema';
import type { Pack } from '../../../../src/pack/schema/index';
import { carriedTo, changesOf, withChange, withoutSlots } from '../../../../src/session/own/changed-layer';
import { ownTold } from '../../../../src/session/own/editable';
import { valueTyped } from '../../../../src/session/own/typed-value';
import { applyChanges } from '../../../../src/sharing/propose/apply-changes';

const demo = JSON.parse(readFileSync('fixtures/packs/grindlewade-circle.json', 'utf8')) as Pack;
const model = demo.models![0]!;
const EMPTY: KeptLayer = { id: demo.about.id, base: { edition: 0, hash: '' }, changes: [] };
const BASE = { edition: demo.about.edition, hash: 'h' };
const number = { part: 'models', entry: model.id, field: ['number'] };

describe('a layer of one’s own', () => {
  const typed = { ...number, saw: model.number!, now: 7 };

  it('says what was and is, over the pack', () => {
    const layer = withChange(EMPTY, typed, BASE)!;
    expect(layer.base).toEqual(BASE);
    expect(applyChanges(demo, changesOf(layer)).pack.models?.[0]?.number).toBe(7);
    const { changes, found } = ownTold(demo, 'h', changesOf(layer), model.label);
    expect(changes[0]?.told.fields).toEqual([{ field: 'number', was: '142000', now: '7' }]);
    expect(found[0]?.fields).toContainEqual({ field: ['number'], label: 'number', typed: '7', value: 7, like: 7 });
  });

  it('takes another word on the same field, held against the pack’s', () => {
    const layer = withChange(withChange(EMPTY, typed, BASE)!, { ...typed, saw: 7, now: 8 }, BASE)!;
    expect(changesOf(layer)).toEqual([{ do: 'change', ...number, was: model.number, now: 8 }]);
  });

  it('is empty again where the pack’s own word is typed, or the change is taken back', () => {
    const layer = withChange(EMPTY, typed, BASE)!;
    expect(withChange(layer, { ...typed, saw: 7, now: model.number! }, BASE)?.changes).toEqual([]);
    const { changes } = ownTold(demo, 'h', changesOf(layer), '');
    expect(withoutSlots(layer, changes[0]?.slots ?? []).changes).toEqual([]);
  });

  it('loses what a later edition says as well, and keeps the rest', () => {
    const other = { ...number, field: ['label'], saw: model.label, now: 'Another' };
    const layer = withChange(withChange(EMPTY, typed, BASE)!, other, BASE)!;
    const later: Pack = { ...demo, models: [{ ...model, number: 7 }, ...demo.models!.slice(1)] };
    const over = carriedTo(layer, { pack: later, hash: 'later' });
    expect(over.cameBack).toBe(1);
    expect(over.layer.base.hash).toBe('later');
    expect(changesOf(over.layer)).toEqual([
      { do: 'change', ...number, field: ['label'], was: model.label, now: 'Another' },
    ]);
  });

  it('adds what a run didn’t say', () => {
    const { place: _, ...runs } = demo.serials!.runs;
    const pack: Pack = { ...demo, serials: { ...demo.serials!, runs } };
    const { first, last } = runs;
    const run = ownTold(pack, 'h', [], `${first[0]} to ${last[0]}`).found.find(({ part }) => part === 'serials.runs')!;
    expect(run.fields).toContainEqual({ field: ['place'], label: 'place', typed: '', value: null, like: '' });
    const change = { part: run.part, entry: run.entry, field: ['place'], saw: null, now: 'Harrowslade' };
    const made = applyChanges(pack, changesOf(withChange(EMPTY, change, BASE)!));
    expect(made.misfits).toEqual([]);
    expect(made.pack.serials?.runs.place?.[0]).toBe('Harrowslade');
  });

  it('takes what is typed where nothing was said for a value of its kind', () => {
    const { year: _, ...runs } = demo.serials!.runs;
    const pack: Pack = { ...demo, serials: { ...demo.serials!, runs } };
    const [run] = ownTold(pack, 'h', [], `${runs.first[0]} to ${runs.last[0]}`).found;
    const year = run!.fields.find(({ field }) => field[0] === 'year')!;
    expect(year).toMatchObject({ typed: '', value: null });
    expect(valueTyped('1901', year.like)).toBe(1901);
    expect(valueTyped('long ago', year.like)).toBeUndefined();
  });
});
