import { describe, expect, it } from 'vitest';
import { openAnswer, writeAnswer } from '../../../../src/sharing/propose/answer';
import type { Change } from '../../../../src/sharing/propose/changes';
import { openProposal, proposable, writeProposal } from '../../../../src/sharing/propose/proposal';
import { toText, writeSigned } from '../../../../src/sharing/propose/signed-file';
import { publicKeyOf } from '../../../../src/sharing/seal/signature';

const keys = (await crypto.subtle.generateKey('Ed25519', true, ['sign', 'verify'])) as CryptoKeyPair;
const base = { edition: 2, hash: 'a'.repeat(64) };
const change: Change = { do: 'change', part: 'models', entry: 'ash', field: ['number'], was: 1, now: 2 };
const proposal = (over: object = {}) => ({
  ...{ pack: 'small', base, author: { name: 'Ann' }, note: 'Ledger, p. 3', changes: [change], ...over },
});
const opens = async (over: object) => openProposal(await writeProposal(proposal(over) as never, keys));

describe('a proposal', () => {
  it('opens with whose it is, what it is for, and what it is known by', async () => {
    const opened = await opens({});
    expect(opened).toMatchObject({ ...proposal(), key: await publicKeyOf(keys) });
    expect(opened?.hash).toMatch(/^[0-9a-f]{64}$/);
    expect(opened?.fingerprint).toHaveLength(26);
  });

  it('is bound to its pack, its base, its purpose, its author and its note', async () => {
    const file = await writeProposal(proposal(), keys);
    for (const [from, to] of [
      ['"small"', '"large"'],
      ['"edition":2', '"edition":3'],
      ['propose-changes', 'propose-changed'],
      ['Ann', 'Bea'],
      ['p. 3', 'p. 4'],
      ['"now":2', '"now":3'],
    ] as const) {
      expect(file).toContain(from);
      expect(await openProposal(file.replace(from, to))).toBeNull();
    }
  });

  it('is no answer, and an answer none', async () => {
    const key = await publicKeyOf(keys);
    const answer = {
      ...{ pack: 'small', proposal: 'b'.repeat(64), edition: 3 },
      changes: [{ slot: 's', outcome: 'declined' as const, reason: 'No source.' }],
    };
    const file = await writeAnswer(answer, keys);
    expect(await openAnswer(file, key)).toEqual(answer);
    expect(await openAnswer(toText('answer', file), key)).toEqual(answer);
    expect(await openAnswer(file, 'another')).toBeNull();
    expect(await openProposal(file.replace('"answer":1', '"proposal":1'))).toBeNull();
    const proposed = await writeProposal(proposal(), keys);
    expect(await openAnswer(proposed.replace('"proposal":1', '"answer":1'), key)).toBeNull();
  });

  it.each<[string, object]>([
    ['that changes nothing', { changes: [] }],
    ['of more changes than anybody weighs', { changes: Array(2001).fill(change) }],
    ['without a name', { author: { name: '' } }],
    ['with a name that turns the reading direction', { author: { name: 'A\u202en' } }],
    ['to change the pack’s id', { changes: [{ ...change, part: 'about', entry: '', field: ['id'], now: 'x' }] }],
    ['to change the edition', { changes: [{ ...change, part: 'about', entry: '', field: ['edition'] }] }],
    ['to change what is beside the pack’s parts', { changes: [{ ...change, part: '', entry: '', field: ['x-a'] }] }],
    ['for a part that is none', { changes: [{ ...change, part: '__proto__' }] }],
    ['for a field of a field of a field', { changes: [{ ...change, field: ['a', 'b', 'c'] }] }],
    ['that renames an entry', { changes: [{ ...change, field: ['id'], now: 'oak' }] }],
    ['that moves a run', { changes: [{ ...change, part: 'serials.runs', entry: 'k|1|2', field: ['first'] }] }],
    [
      'that adds what it doesn’t say',
      { changes: [{ do: 'add', part: 'models', entry: 'oak', value: { id: 'ash' }, follows: null }] },
    ],
    ['that adds no entry', { changes: [{ do: 'add', part: 'models', entry: 'oak', value: 7, follows: null }] }],
    ['that adds beside the lists', { changes: [{ do: 'add', part: 'about', entry: '', value: {}, follows: null }] }],
    ['of another kind of change', { changes: [{ ...change, do: 'sing' }] }],
    ['with more in it', { changes: [change], more: 1 }],
  ])('%s does not open', async (_what, over) => {
    const { changes, ...rest } = proposal(over);
    const file = await writeSigned('proposal', { ...rest, changes, purpose: 'propose-changes' }, keys);
    expect(await openProposal(file)).toBeNull();
  });

  it('of a second entry of one name opens', async () => {
    const value = { from: 'GBP', to: 'EUR', date: '2026', rate: 1 };
    const added = { do: 'add', part: 'prices.rates', entry: 'GBP|EUR|2026#2', value, follows: null };
    expect((await opens({ changes: [added] }))?.changes).toEqual([added]);
  });

  it('of any other text is none', async () => {
    for (const text of ['', '{}', '{}\n{}', 'bedplate:proposal:', 'bedplate:proposal:!!:end', 'bedplate:proposal::end'])
      expect(await openProposal(text)).toBeNull();
  });
});

describe('what can be proposed', () => {
  it('is all but the pack’s id, its edition and what is beside its parts', () => {
    const beside = (part: string, field: string, parts: object = {}): Change => ({
      ...{ do: 'change', part, entry: '', field: [field], now: 'x', ...parts },
    });
    const note = beside('about', 'note');
    const list = beside('', 'models', { now: [] });
    expect(
      proposable([beside('about', 'id'), beside('about', 'edition'), beside('', 'x-a'), note, list, change]),
    ).toEqual([...[note, list, change]]);
  });
});
