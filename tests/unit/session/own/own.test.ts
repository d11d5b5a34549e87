import 'fake-indexeddb/auto';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { changeLayer, memberKeys, readLayers } from '../../../../src/keep/layers';
import { openKeep } from '../../../../src/keep/open';
import type { KeptLayer } from '../../../../src/keep/schema';
import type { Pack } from '../../../../src/pack/schema/index';
import { carriedTo, changesOf, withChange, withoutSlots } from '../../../../src/session/own/changed-layer';
import { ownTold } from '../../../../src/session/own/editable';
import { isTypable, typedForm, valueTyped } from '../../../../src/session/own/typed-value';
import { applyChanges } from '../../../../src/sharing/propose/apply-changes';
import type { Json } from '../../../../src/sharing/propose/json';

const demo = JSON.parse(readFileSync('fixtures/packs/grindlewade-circle.json', 'utf8')) as Pack;
const model = demo.models![0]!;
const EMPTY: KeptLayer = { id: demo.about.id, base: { edition: 0, hash: '' }, changes: [] };
const BASE = { edition: demo.about.edition, hash: 'h' };
const number = { part: 'models', entry: model.id, field: ['number'] };

describe('a value that is typed', () => {
  it.each([
    [true, 'no', false],
    [142_000, '141999', 141_999],
    ['cast', ' alloy ', 'alloy'],
    [{ from: 11, to: 12 }, '10.5 to 12', { from: 10.5, to: 12 }],
    [{ from: 11, to: 12 }, '11', { from: 11, to: 11 }],
    [{ from: 11 }, '9 or more', { from: 9 }],
    [['a', 'b'], 'a, c', ['a', 'c']],
    [{ is: 3, source: 's' }, '4', { is: 4, source: 's' }],
    [null, 'Harrowslade', 'Harrowslade'],
  ] as [Json, string, Json][])('in the place of %j: %s', (was, typed, expected) => {
    expect(valueTyped(typed, was)).toEqual(expected);
  });

  it.each([
    [true, 'perhaps'],
    [5, 'five'],
    [{ from: 1, to: 2 }, 'about 3'],
    ['x', ''],
  ] as [Json, string][])('in the place of %j is none: %s', (was, typed) => {
    expect(valueTyped(typed, was)).toBeUndefined();
  });

  it('comes back as it was from the form in which it is shown', () => {
    const facts = demo.models!.flatMap((each) => Object.values(each.facts ?? {})) as Json[];
    const typable = facts.filter(isTypable);
    expect(typable.length).toBeGreaterThan(20);
    for (const fact of typable) expect(valueTyped(typedForm(fact), fact)).toEqual(fact);
    expect(isTypable([{ is: 'a', when: { made: { to: 1933 } } }, { is: 'b' }])).toBe(false);
  });
});

describe('what can be changed of a pack', () => {
  it('is found by a name, and a run by a number in it', () => {
    const { found } = ownTold(demo, 'h', [], model.label);
    expect(found[0]).toMatchObject({ part: 'models', entry: model.id, name: model.label });
    expect(found[0]?.fields.map(({ field }) => field.join('.'))).toContain('facts.weight');
    expect(found[0]?.fields.map(({ field }) => field.join('.'))).not.toContain('id');
    const written = ownTold(demo, 'h', [], 'KD 439114').found;
    expect(written.map(({ entry }) => entry)).toEqual(['brindfold-post-war|KD433001|KD441000']);
    const { first, last } = demo.serials!.runs;
    const middle = String(Math.floor((Number(first[0]) + Number(last[0])) / 2));
    const runs = ownTold(demo, 'h', [], middle).found.filter(({ part }) => part === 'serials.runs');
    expect(runs.map(({ name }) => name)).toContain(`${first[0]} to ${last[0]}`);
  });

  it('is nothing where nothing is sought', () => {
    expect(ownTold(demo, 'h', [], '')).toMatchObject({ found: [], more: 0, changes: [], clashing: 0 });
  });
});

describe('a layer of one’s own', () => {
  const typed = { ...number, saw: model.number!, now: 7 };

  it('says what was and is, over the pack', () => {
    const layer = withChange(EMPTY, typed, BASE)!;
    expect(layer.base).toEqual(BASE);
    expect(applyChanges(demo, changesOf(layer)).pack.models?.[0]?.number).toBe(7);
    const { changes, found } = ownTold(demo, 'h', changesOf(layer), model.label);
    expect(changes[0]?.told.fields).toEqual([{ field: 'number', was: '142000', now: '7' }]);
    expect(found[0]?.fields).toContainEqual({ field: ['number'], label: 'number', typed: '7', value: 7 });
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
    expect(run.fields).toContainEqual({ field: ['place'], label: 'place', typed: '', value: null });
    const change = { part: run.part, entry: run.entry, field: ['place'], saw: null, now: 'Harrowslade' };
    const made = applyChanges(pack, changesOf(withChange(EMPTY, change, BASE)!));
    expect(made.misfits).toEqual([]);
    expect(made.pack.serials?.runs.place?.[0]).toBe('Harrowslade');
  });

  it('written by two windows loses no word of either, and says where both wrote in one field', async () => {
    const keep = await openKeep('own-layer');
    if (!keep.ok) throw new Error(keep.trouble);
    const db = keep.value;
    const { id } = demo.about;
    const label = { part: 'models', entry: model.id, field: ['label'], saw: model.label, now: 'Another' };
    await Promise.all([
      changeLayer(db, id, (layer) => withChange(layer, typed, BASE)),
      changeLayer(db, id, (layer) => withChange(layer, label, BASE)),
    ]);
    const late = await changeLayer(db, id, (layer) => withChange(layer, { ...typed, now: 9 }, BASE));
    expect(late).toEqual({ ok: true, value: null });
    const read = await readLayers(db);
    expect(read.ok && read.value.get(id)?.changes).toHaveLength(2);
    await changeLayer(db, id, (layer) => ({ ...layer, changes: [] }));
    const gone = await readLayers(db);
    expect(gone.ok && gone.value.size).toBe(0);
    db.close();
  });
});

it('the key that signs proposals is made once, and can’t be had out', async () => {
  const keep = await openKeep('own-keys');
  if (!keep.ok) throw new Error(keep.trouble);
  let made = 0;
  const make = async () => {
    made += 1;
    return (await crypto.subtle.generateKey('Ed25519', false, ['sign', 'verify'])) as CryptoKeyPair;
  };
  const first = await memberKeys(keep.value, make);
  const second = await memberKeys(keep.value, make);
  expect([first.ok, second.ok, made]).toEqual([true, true, 1]);
  await expect(
    crypto.subtle.exportKey('pkcs8', (first as { value: CryptoKeyPair }).value.privateKey),
  ).rejects.toThrow();
  keep.value.close();
});
