import { beforeAll, describe, expect, it } from 'vitest';
import type { KeptKnown } from '../../../src/keep/schema';
import { type ChosenFile, examine, type Standing } from '../../../src/session/install';
import { changeKey } from '../../../src/sharing/seal/key-change';
import { founded, sealPack } from '../../../src/sharing/seal/seal';

const pack = (id: string, edition = 1) => ({
  schema: 1 as const,
  about: {
    id,
    title: `Pack ${id}`,
    edition,
    licence: 'CC0',
    language: 'en',
    covers: { thing: 'sewing machine', words: ['sewing machine'] },
  },
});
const text = (id: string, edition = 1) => JSON.stringify(pack(id, edition));
const stood = (shelf: Standing[], known: KeptKnown[] = []) => ({
  shelf,
  known: new Map(known.map((each) => [each.id, each])),
});
const file = (name: string, content: string): ChosenFile => ({ name, read: async () => content });
const trade: Standing = { id: 'trade', edition: 1, shipped: true, sealedBy: null };
const club = (edition: number, sealedBy: string | null = null): Standing => ({
  ...{ id: 'club', edition, shipped: false, sealedBy },
});

let sealed: string;
let own: ReturnType<typeof pack>;
beforeAll(async () => {
  const keys = (await crypto.subtle.generateKey('Ed25519', true, ['sign', 'verify'])) as CryptoKeyPair;
  own = (await founded(pack('club', 2), keys)) as typeof own;
  sealed = await sealPack(own, keys);
});

describe('examining chosen files', () => {
  it('accepts sound packs, and says which edition they replace', async () => {
    const { accepted } = await examine(
      [file('a.json', text('club', 2)), file('b.json', text('other'))],
      stood([trade, club(1)]),
    );
    expect(accepted?.map(({ id, title, edition, replaces }) => [id, title, edition, replaces])).toEqual([
      ['club', 'Pack club', 2, { edition: 1, otherText: true }],
      ['other', 'Pack other', 1, null],
    ]);
  });

  it('opens a sealed file, and says whose seal it is', async () => {
    const there = { ...club(1, '0000 1111'), id: own.about.id };
    const { accepted } = await examine([file('club.pack', sealed)], stood([trade, there]));
    expect(accepted?.[0]?.sealedBy).toMatch(/^(\d{4} ){9}\d{4}$/);
    expect(accepted?.[0]?.replaces).toEqual({ edition: 1, otherText: true });
    expect(JSON.parse(accepted?.[0]?.json ?? '')).toEqual(own);
  });

  it('refuses a sealed file that was changed since', async () => {
    const { refused } = await examine([file('club.pack', sealed.replace('Pack club', 'Pack blub'))], stood([trade]));
    expect(refused?.[0]?.issues).toHaveLength(1);
  });

  it('installs nothing where one of several files is bad, and names that file with its issues', async () => {
    const bad = text('club').replace('"edition":1', '"edition":"one"');
    const examined = await examine([file('good.json', text('other')), file('bad.json', bad)], stood([trade]));
    expect(examined.accepted).toBeUndefined();
    expect(examined.refused).toHaveLength(1);
    expect(examined.refused?.[0]?.file).toBe('bad.json');
    expect(examined.refused?.[0]?.issues[0]?.path).toBe('about.edition');
  });

  it('refuses a file that can’t be read, with the reason that reading gave', async () => {
    const issue = { path: '', what: 'too large', expected: 'a smaller one' };
    const examined = await examine([{ name: 'big.json', read: async () => issue }], stood([trade]));
    expect(examined.refused).toEqual([{ file: 'big.json', issues: [issue] }]);
  });

  it.each([
    ['the shipped pack’s id', [file('a.json', text('trade', 9))], 'about.id'],
    ['one id twice', [file('a.json', text('x')), file('b.json', text('x', 2))], 'about.id'],
  ])('refuses %s', async (_what, files, path) => {
    const { refused } = await examine(files, stood([trade]));
    expect(refused?.flatMap(({ issues }) => issues.map((issue) => issue.path))).toEqual([path]);
  });

  it('takes the same edition again, for an author tries things out, and says whether the text is another one', async () => {
    const { accepted } = await examine([file('a.json', text('club', 1))], stood([club(1)]));
    expect(accepted?.[0]?.replaces).toEqual({ edition: 1, otherText: true });
    const { hash = '' } = accepted?.[0] ?? {};
    const again = await examine([file('a.json', text('club', 1))], stood([{ ...club(1), hash }]));
    expect(again.accepted?.[0]?.replaces).toEqual({ edition: 1, otherText: false });
  });

  it('tells an earlier edition apart: going back is the user’s choice', async () => {
    const { accepted, earlier } = await examine([file('a.json', text('club', 1))], stood([club(2)]));
    expect(earlier).toEqual([{ title: 'Pack club', edition: 1, after: 2 }]);
    expect(accepted).toHaveLength(1);
    expect((await examine([file('a.json', text('club', 2))], stood([club(2)]))).earlier).toEqual([]);
  });

  it('tells which file is checked, once it has been read', async () => {
    const told: string[] = [];
    const read = async () => {
      told.push('read');
      return text('club');
    };
    await examine([{ name: 'a.json', read }], stood([]), (name) => told.push(name));
    expect(told).toEqual(['read', 'a.json']);
  });
});

describe('a sealed pack', () => {
  const newKeys = () => crypto.subtle.generateKey('Ed25519', true, ['sign', 'verify']) as Promise<CryptoKeyPair>;
  const at = (edition: number, title = 'Pack club') => ({ ...own, about: { ...own.about, edition, title } });
  const examined = async (content: string, known: KeptKnown[] = [], shelf: Standing[] = []) =>
    examine([file('club.pack', content)], stood([trade, ...shelf], known));
  let keys: CryptoKeyPair;
  let known: KeptKnown;
  beforeAll(async () => {
    keys = await newKeys();
    own = (await founded(pack('club', 2), keys)) as typeof own;
    sealed = await sealPack(own, keys);
    const first = await examined(sealed);
    known = first.accepted?.[0]?.remember as KeptKnown;
  });
  const issueOf = async (content: string) => (await examined(content, [known])).refused?.[0]?.issues[0]?.what;

  it('is remembered with its key at first sight', async () => {
    expect(known).toMatchObject({ id: own.about.id, edition: 2, earlier: [] });
    const { accepted } = await examined(await sealPack(at(3), keys), [known]);
    expect(accepted?.[0]?.remember).toMatchObject({ edition: 3, key: known.key });
  });

  it('never gives way to an unsealed one of its id', async () => {
    expect((await examined(JSON.stringify(at(3)))).refused).toHaveLength(1);
    expect((await examined(JSON.stringify(at(3)), [known])).refused).toHaveLength(1);
  });

  it('goes back only on purpose, and what is remembered doesn’t', async () => {
    const later = { ...known, edition: 5, hash: 'later' };
    const { accepted, earlier } = await examined(sealed, [later]);
    expect(earlier).toEqual([{ title: 'Pack club', edition: 2, after: 5 }]);
    expect(accepted?.[0]?.remember).toEqual(later);
  });

  it('of the same number with another text is a fork, and is shown', async () => {
    expect(await issueOf(await sealPack(at(2, 'Another'), keys))).toContain('edition 2');
  });

  it('follows a key change that both keys have signed, tells it, and refuses every other', async () => {
    const next = await newKeys();
    const change = await changeKey(own.about.id, 3, keys, next);
    const { accepted } = await examined(await sealPack(at(3), next, { history: [change] }), [known]);
    expect(accepted?.[0]?.handedOver).toEqual([
      { edition: 3, from: expect.stringMatching(/^(\d{4} ){9}\d{4}$/), to: accepted?.[0]?.sealedBy },
    ]);
    expect(accepted?.[0]?.remember).toMatchObject({ edition: 3, earlier: [known.key] });
    // The old key goes on sealing what it has given away.
    const given = accepted?.[0]?.remember as KeptKnown;
    expect((await examined(await sealPack(at(4), keys), [given])).refused).toHaveLength(1);
  });
});
