import { describe, expect, it } from 'vitest';
import type { Pack } from '../../../../src/pack/schema/index';
import { slotOf } from '../../../../src/sharing/propose/changes';
import { diffPacks } from '../../../../src/sharing/propose/diff-packs';
import {
  acceptWhatFits,
  type Decision,
  mergeProposals,
  mergeRows,
  type Row,
} from '../../../../src/sharing/propose/merge-proposals';
import { smallPack } from '../../pack/support/packs';

const base = smallPack({
  attributes: [{ id: 'weight', kind: 'measure', label: 'Weight', unit: 'kg' }],
  models: [
    { id: 'ash', label: 'Ash', names: ['Ash'], number: 100, facts: { weight: 8 } },
    { id: 'elm', label: 'Elm', names: ['Elm'] },
  ],
});

/** What somebody proposes who edits a pack so. */
const proposal = (edit: (pack: Pack) => void, of = base) => {
  const edited = structuredClone(of);
  edit(edited);
  return { changes: diffPacks(of, edited) };
};
const number = (made: number) => proposal((pack) => Object.assign(pack.models![0]!, { number: made }));
const without = (id: string) =>
  proposal((pack) => {
    pack.models = pack.models!.filter((model) => model.id !== id);
  });
const states = (rows: readonly Row[]) =>
  rows.map(({ entry, field, state }) => [entry, field?.join('.') ?? null, state]);
const merge = (pack: Pack, proposals: { changes: ReturnType<typeof diffPacks> }[], ...decided: Decision[]) => {
  const rows = mergeRows(pack, proposals);
  return mergeProposals(pack, rows, new Map(rows.map(({ slot }, i) => [slot, decided[i]!])), proposals.length);
};

describe('rows', () => {
  it('hold two proposals for one field together, as a conflict, with what stands there', () => {
    const [row, ...more] = mergeRows(base, [number(1), number(2)]);
    expect(more).toEqual([]);
    expect(row).toMatchObject({ part: 'models', entry: 'ash', field: ['number'], here: 100, state: 'conflict' });
    expect(row!.offers.map(({ change, from }) => ['now' in change && change.now, from])).toEqual([
      [1, [0]],
      [2, [1]],
    ]);
  });

  it('take the same proposal of two people as one offer of both', () => {
    const [row] = mergeRows(base, [number(1), number(1)]);
    expect(row).toMatchObject({ state: 'open', offers: [{ from: [0, 1] }] });
  });

  it('are apart for other fields of one entry, and for other keys of one table', () => {
    const weight = proposal((pack) => Object.assign(pack.models![0]!.facts!, { weight: 9 }));
    expect(states(mergeRows(base, [number(1), weight]))).toEqual([
      ['ash', 'facts.weight', 'open'],
      ['ash', 'number', 'open'],
    ]);
  });

  it('tell what the pack says already, and what has changed since the author saw it', () => {
    const now = structuredClone(base);
    now.models![0]!.number = 1;
    expect(mergeRows(now, [number(1)])).toMatchObject([{ state: 'already', here: 1 }]);
    expect(mergeRows(now, [number(2)])).toMatchObject([{ state: 'outdated', reason: 'differs', here: 1 }]);
    expect(mergeRows({ ...base, models: [] }, [number(2)])).toMatchObject([{ state: 'outdated', reason: 'no-entry' }]);
  });

  it('hold an entry that one removes against a field of it that another changes', () => {
    const rows = mergeRows(base, [without('ash'), number(1)]);
    expect(states(rows)).toEqual([
      ['ash', null, 'conflict'],
      ['ash', 'number', 'conflict'],
    ]);
    expect(rows.map(({ slot }) => slot)).toEqual([...rows].reverse().flatMap(({ against }) => against));
  });
});

describe('a decision', () => {
  it('accepts what fits, and leaves conflicts to the keeper', () => {
    const proposals = [number(1), number(2), without('elm')];
    const rows = mergeRows(base, proposals);
    const merged = mergeProposals(base, rows, acceptWhatFits(rows), 3);
    expect(merged.pack.models).toEqual([base.models![0]]);
    expect(merged.undecided).toEqual([rows[0]]);
    expect(merged.answers).toEqual([[], [], [{ slot: rows[1]!.slot, outcome: 'accepted', reason: '' }]]);
    expect(base.models).toHaveLength(2);
  });

  it('for one of two declines the other, with the reason', () => {
    const merged = merge(base, [number(1), number(2)], { do: 'accept', offer: 1, reason: 'By the ledger.' });
    expect(merged.pack.models![0]!.number).toBe(2);
    expect(merged.answers.map(([answer]) => [answer!.outcome, answer!.reason])).toEqual([
      ['declined', 'By the ledger.'],
      ['accepted', ''],
    ]);
    const silent = merge(base, [number(1), number(2)], { do: 'accept', offer: 0 });
    expect(silent.answers[1]![0]!.reason).toContain('Another proposal');
  });

  it('edits: what is put there instead goes back with the reason', () => {
    const merged = merge(base, [number(1)], { do: 'edit', now: 150, reason: 'Two ledgers.' });
    expect(merged.pack.models![0]!.number).toBe(150);
    expect(merged.answers[0]).toMatchObject([{ outcome: 'edited', now: 150, reason: 'Two ledgers.' }]);
    const gone = merge(base, [number(1)], { do: 'edit', reason: 'Nobody knows.' });
    expect(gone.pack.models![0]).not.toHaveProperty('number');
  });

  it('edits a new entry, and one that was to be removed', () => {
    const oak = { id: 'oak', label: 'Oak', names: ['Oak'] };
    const adding = proposal((pack) => void pack.models!.push(oak));
    const added = merge(base, [adding], { do: 'edit', now: { ...oak, number: 5 }, reason: 'Counted.' });
    expect(added.pack.models!.map(({ id, number: made }) => [id, made])).toEqual([
      ['ash', 100],
      ['elm', undefined],
      ['oak', 5],
    ]);
    const kept = merge(base, [without('ash')], {
      do: 'edit',
      now: { id: 'ash', label: 'Ash', names: [] },
      reason: 'Kept.',
    });
    expect(kept.misfits).toEqual([]);
    expect(kept.pack.models!.find(({ id }) => id === 'ash')).toEqual({ id: 'ash', label: 'Ash', names: [] });
  });

  it('declines: nothing changes, and the reason goes back', () => {
    const merged = merge(base, [number(1)], { do: 'decline', reason: 'No source.' });
    expect(merged.pack).toEqual(base);
    expect(merged.answers[0]).toMatchObject([{ outcome: 'declined', reason: 'No source.' }]);
  });

  it('holds over what stands there now, where the author saw something else', () => {
    const now = structuredClone(base);
    now.models![0]!.number = 70;
    expect(merge(now, [number(2)], { do: 'accept', offer: 0 }).pack.models![0]!.number).toBe(2);
  });

  it('that can’t be carried out beside the others stays undecided, and is named', () => {
    const accept: Decision = { do: 'accept', offer: 0 };
    const merged = merge(base, [without('ash'), number(1)], accept, accept);
    expect(merged.undecided.length + merged.answers.flat().length).toBe(2);
    expect(merged.misfits.map(({ change }) => slotOf(change))).toEqual(merged.undecided.map(({ slot }) => slot));
  });

  it('tells what is wrong with the pack, taken together', () => {
    const now = smallPack({ models: base.models!, attributes: base.attributes! });
    const caution = proposal((pack) => {
      pack.cautions = [{ id: 'heavy', text: 'Heavy.', models: ['elm'] }];
    }, now);
    const rows = mergeRows(now, [without('elm'), caution]);
    const { issues } = mergeProposals(now, rows, acceptWhatFits(rows), 2);
    expect(issues).toMatchObject([{ path: 'cautions[0].models[0]' }]);
  });
});
