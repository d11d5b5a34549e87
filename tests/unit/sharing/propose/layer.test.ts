import { describe, expect, it } from 'vitest';
import type { Pack } from '../../../../src/pack/schema/index';
import { slotOf } from '../../../../src/sharing/propose/changes';
import { carryOver, layerOf, settleClash, withLayer } from '../../../../src/sharing/propose/layer';
import { smallPack } from '../../pack/support/packs';

const hash = 'a'.repeat(64);
const base = smallPack({ models: [{ id: 'ash', label: 'Ash', names: ['Ash'], number: 100 }] });
const edited = (made: number, label = 'Ash', edition = 1): Pack => ({
  ...base,
  about: { ...base.about, edition },
  models: [{ id: 'ash', label, names: ['Ash'], number: made }],
});
const mine = layerOf({ pack: base, hash }, edited(120, 'The Ash'));

describe('a user’s layer', () => {
  it('lies over the pack that it names, and over no other', () => {
    expect(mine).toMatchObject({ layer: 1, pack: 'small', base: { edition: 1, hash } });
    expect(withLayer(base, mine).pack).toEqual(edited(120, 'The Ash'));
    const other = { ...base, about: { ...base.about, id: 'other' } };
    expect(withLayer(other, mine).pack).toEqual(other);
  });

  it('holds nothing of the pack’s id and edition', () => {
    const renamed = { ...base, about: { ...base.about, id: 'other', edition: 7, note: 'Mine' } };
    expect(layerOf({ pack: base, hash }, renamed).changes).toEqual([
      { do: 'change', part: 'about', entry: '', field: ['note'], now: 'Mine' },
    ]);
  });

  it('loses what came back in an edition, keeps what still fits, and shows what clashes', () => {
    const next = { pack: edited(120, 'Ash', 2), hash: 'b'.repeat(64) };
    const over = carryOver(mine, next);
    expect(over.cameBack).toMatchObject([{ field: ['number'] }]);
    expect(over.layer).toMatchObject({ base: { edition: 2, hash: next.hash }, changes: [{ field: ['label'] }] });
    expect(over.clashes).toEqual([]);
    const otherwise = carryOver(mine, { pack: edited(90, 'Ash', 2), hash });
    expect(otherwise.clashes).toMatchObject([{ reason: 'differs', here: 90, change: { was: 100, now: 120 } }]);
    expect(otherwise.layer.changes).toHaveLength(2);
    // A clash isn't shown over the pack until the user has decided.
    expect(withLayer(edited(90, 'Ash', 2), otherwise.layer).pack.models).toMatchObject([
      { number: 90, label: 'The Ash' },
    ]);
  });

  it('settles a clash as the user says', () => {
    const now = edited(90, 'Ash', 2);
    const { layer, clashes } = carryOver(mine, { pack: now, hash });
    const [clash] = clashes;
    expect(withLayer(now, settleClash(layer, clash!, 'mine')).pack.models).toMatchObject([{ number: 120 }]);
    expect(settleClash(layer, clash!, 'edition').changes).toMatchObject([{ field: ['label'] }]);
  });

  it('loses what the keeper took up in other words, and keeps what was declined, with the reasons', () => {
    const slots = mine.changes.map(slotOf);
    const [label, number] = [
      slots.find((slot) => slot.includes('label'))!,
      slots.find((slot) => slot.includes('number'))!,
    ];
    const over = carryOver(mine, { pack: edited(110, 'Ash', 2), hash }, [
      { slot: number, outcome: 'edited', now: 110, reason: 'By the ledger.' },
      { slot: label, outcome: 'declined', reason: 'No "The".' },
    ]);
    expect(over.cameBackEdited).toMatchObject([{ answer: { reason: 'By the ledger.' } }]);
    expect(over.declined).toMatchObject([{ change: { field: ['label'] }, answer: { reason: 'No "The".' } }]);
    expect(over.layer.changes).toMatchObject([{ field: ['label'] }]);
    expect(over.clashes).toEqual([]);
  });

  it('of a new entry clashes with another one of that name, and takes its place where the user says so', () => {
    const oak = (label: string) => ({ id: 'oak', label, names: ['Oak'] });
    const adding = layerOf({ pack: base, hash }, { ...base, models: [...base.models!, oak('Oak')] });
    const next = { ...edited(100, 'Ash', 2), models: [...base.models!, oak('Other oak')] };
    const over = carryOver(adding, { pack: next, hash });
    expect(over.clashes).toMatchObject([{ reason: 'there-already', here: oak('Other oak') }]);
    const settled = settleClash(over.layer, over.clashes[0]!, 'mine');
    expect(withLayer(next, settled)).toMatchObject({ misfits: [], pack: { models: [{ id: 'ash' }, oak('Oak')] } });
  });
});
