import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parsePack } from '../../src/pack/parse';
import type { Pack } from '../../src/pack/schema/index';
import { applyChanges } from '../../src/sharing/propose/apply-changes';
import { slotOf } from '../../src/sharing/propose/changes';
import { diffPacks } from '../../src/sharing/propose/diff-packs';
import { carryOver, layerOf, withLayer } from '../../src/sharing/propose/layer';
import { acceptWhatFits, type Decision, mergeProposals, mergeRows } from '../../src/sharing/propose/merge-proposals';
import { openProposal, writeProposal } from '../../src/sharing/propose/proposal';
import { toText } from '../../src/sharing/propose/signed-file';
import { fullPack } from '../unit/pack/support/packs';
import { changed } from './pack-arbitrary/changed';
import { pack } from './pack-arbitrary/pack';
import { PATIENCE, TIMES } from './pack-arbitrary/times';

const asRead = <T>(whole: T): T => JSON.parse(JSON.stringify(whole)) as T;
const hash = '0'.repeat(64);
const keys = (await crypto.subtle.generateKey('Ed25519', true, ['sign', 'verify'])) as CryptoKeyPair;

/** A pack and others that were made of it by editing; all in order, with its id and edition. */
function editions(count: number): fc.Arbitrary<[Pack, Pack[]]> {
  const some = fc.oneof(
    { weight: 2, arbitrary: fc.constant(null).map(() => fullPack()) },
    { weight: 1, arbitrary: pack },
  );
  return some.map(asRead).chain((whole) =>
    fc.array(changed(fc.constant(whole)), { minLength: count, maxLength: count }).map((others): [Pack, Pack[]] => [
      whole,
      others.map((other) => {
        const { pack: read } = parsePack(JSON.stringify(other));
        const { id, edition } = whole.about;
        return read ? { ...read, about: { ...read.about, id, edition } } : whole;
      }),
    ]),
  );
}

const nextEdition = (one: Pack): Pack => ({ ...one, about: { ...one.about, edition: one.about.edition + 1 } });

describe('proposals', PATIENCE, () => {
  test('propose, merge, publish: the proposer’s layer is empty', async () => {
    let proposed = 0;
    await fc.assert(
      fc.asyncProperty(editions(1), async ([base, [edited]]) => {
        const layer = layerOf({ pack: base, hash }, edited!);
        fc.pre(layer.changes.length > 0);
        const content = { pack: base.about.id, base: layer.base, author: { name: 'A member' }, note: '' };
        const file = await writeProposal({ ...content, changes: layer.changes }, keys);
        const opened = await openProposal(file);
        expect(opened?.changes).toEqual(asRead(layer.changes));
        const rows = mergeRows(base, [opened!]);
        const merged = mergeProposals(base, rows, acceptWhatFits(rows), 1);
        expect(merged.undecided).toEqual([]);
        expect(merged.issues).toEqual([]);
        const published = nextEdition(merged.pack);
        const over = carryOver(layer, { pack: published, hash });
        expect(over.layer.changes).toEqual([]);
        expect(over.cameBack).toHaveLength(layer.changes.length);
        expect(over.layer.base.edition).toBe(base.about.edition + 1);
        proposed++;
      }),
      { numRuns: 100 * TIMES },
    );
    expect(proposed).toBeGreaterThan(50);
  });

  test('merge to the same pack and the same rows whatever their order', () => {
    fc.assert(
      fc.property(editions(3), fc.shuffledSubarray([0, 1, 2], { minLength: 3 }), ([base, edited], order) => {
        const proposals = edited.map((one) => ({ changes: layerOf({ pack: base, hash }, one).changes }));
        const shuffled = order.map((i) => proposals[i]!);
        const rows = mergeRows(base, proposals);
        const others = mergeRows(base, shuffled);
        const told = (all: typeof rows) => all.map(({ slot, state, against }) => [slot, state, against]);
        expect(told(others)).toEqual(told(rows));
        const merged = mergeProposals(base, rows, acceptWhatFits(rows), 3);
        expect(mergeProposals(base, others, acceptWhatFits(others), 3).pack).toEqual(merged.pack);
      }),
      { numRuns: 100 * TIMES },
    );
  });

  test('that are disjoint merge to the same one after the other, in any order', () => {
    let disjoint = 0;
    fc.assert(
      fc.property(editions(2), ([base, [one, other]]) => {
        const [a, b] = [diffPacks(base, one!), diffPacks(base, other!)];
        const places = (changes: typeof a) => new Set(changes.map((change) => `${change.part}\n${change.entry}`));
        fc.pre([...places(a)].every((place) => !places(b).has(place)));
        // Two additions after one entry have no order of their own.
        fc.pre([...a, ...b].every((change) => change.do !== 'add' && change.do !== 'move'));
        const inTurn = (...turns: (typeof a)[]) =>
          turns.reduce((now, changes) => applyChanges(now, changes).pack, base);
        expect(inTurn(a, b)).toEqual(inTurn(b, a));
        expect(inTurn(a, b)).toEqual(applyChanges(base, [...b, ...a]).pack);
        disjoint++;
      }),
      { numRuns: 100 * TIMES },
    );
    expect(disjoint).toBeGreaterThan(30);
  });

  test('nothing is dropped: every change is answered or in a row that nobody decided', () => {
    fc.assert(
      fc.property(editions(2), fc.infiniteStream(fc.nat(3)), ([base, edited], choices) => {
        const proposals = edited.map((one) => ({ changes: layerOf({ pack: base, hash }, one).changes }));
        const rows = mergeRows(base, proposals);
        const decisions = new Map<string, Decision>();
        for (const { slot, offers } of rows) {
          const choice = choices.next().value as number;
          if (choice === 0) decisions.set(slot, { do: 'decline', reason: 'No source.' });
          else if (choice === 1) decisions.set(slot, { do: 'accept', offer: offers.length - 1 });
          else if (choice === 2) {
            const [{ change }] = offers as [(typeof offers)[0]];
            decisions.set(slot, {
              do: 'edit',
              reason: 'Said otherwise.',
              ...('was' in change ? { now: change.was } : {}),
            });
          }
        }
        const merged = mergeProposals(base, rows, decisions, 2);
        const open = new Set(merged.undecided.map(({ slot }) => slot));
        for (const [i, { changes }] of proposals.entries()) {
          const answered = new Set(merged.answers[i]!.map(({ slot }) => slot));
          expect(changes.every((change) => answered.has(slotOf(change)) || open.has(slotOf(change)))).toBe(true);
        }
      }),
      { numRuns: 100 * TIMES },
    );
  });

  test('open from a text that was quoted and broken on the way, and not with one letter changed', async () => {
    const base = asRead(fullPack());
    const edited = { ...base, models: base.models!.slice(1) };
    const layer = layerOf({ pack: base, hash }, edited);
    const content = { pack: base.about.id, base: layer.base, author: { name: 'Ä member' }, note: 'Ledger, p. 3' };
    const file = await writeProposal({ ...content, changes: layer.changes }, keys);
    const text = `Dear keeper,\n\n${toText('proposal', file)}\n\nYours`;
    const quoted = text.replace(/^/gm, '> ').replace(/(.{50})/g, '$1\r\n>> ');
    expect((await openProposal(quoted))?.note).toBe('Ledger, p. 3');
    await fc.assert(
      fc.asyncProperty(fc.nat(file.length - 1), fc.integer({ min: 32, max: 126 }), async (at, code) => {
        fc.pre(file.charCodeAt(at) !== code);
        expect(await openProposal(file.slice(0, at) + String.fromCharCode(code) + file.slice(at + 1))).toBeNull();
      }),
      { numRuns: 200 * TIMES },
    );
  });
});

describe('a user’s own layer', PATIENCE, () => {
  test('shows the pack as the user edited it, and leaves the pack alone', () => {
    fc.assert(
      fc.property(editions(1), ([base, [edited]]) => {
        const before = asRead(base);
        const shown = withLayer(base, layerOf({ pack: base, hash }, edited!));
        expect(shown.misfits).toEqual([]);
        // What is beside the pack's parts is not a member's to change.
        expect(withoutBeside(shown.pack)).toEqual(withoutBeside(edited!));
        expect(base).toEqual(before);
      }),
      { numRuns: 100 * TIMES },
    );
  });

  test('names every change that it keeps, gives back or finds in another edition otherwise', () => {
    fc.assert(
      fc.property(editions(2), ([base, [mine, theirs]]) => {
        const layer = layerOf({ pack: base, hash }, mine!);
        const over = carryOver(layer, { pack: nextEdition(theirs!), hash });
        expect(over.layer.changes.length + over.cameBack.length).toBe(layer.changes.length);
        for (const { change } of over.clashes) expect(over.layer.changes).toContain(change);
        const again = withLayer(theirs!, over.layer);
        expect(again.misfits.length).toBe(over.clashes.length);
      }),
      { numRuns: 100 * TIMES },
    );
  });
});

function withoutBeside(one: Pack): Partial<Pack> {
  const parts = Object.entries(one).filter(([key]) => !key.startsWith('x-') && key !== '$schema');
  return Object.fromEntries(parts) as Partial<Pack>;
}
