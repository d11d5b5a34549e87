import { beforeAll, describe, expect, it } from 'vitest';
import { type ChosenFile, examine, type Standing } from '../../../src/session/install';
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
      [trade, club(1)],
    );
    expect(accepted?.map(({ id, title, edition, replaces }) => [id, title, edition, replaces])).toEqual([
      ['club', 'Pack club', 2, { edition: 1, sealedBy: null }],
      ['other', 'Pack other', 1, null],
    ]);
  });

  it('opens a sealed file, and says whose seal it is and whose stood there before', async () => {
    const there = { ...club(1, '0000 1111'), id: own.about.id };
    const { accepted } = await examine([file('club.pack', sealed)], [trade, there]);
    expect(accepted?.[0]?.sealedBy).toMatch(/^(\d{4} ){9}\d{4}$/);
    expect(accepted?.[0]?.replaces).toEqual({ edition: 1, sealedBy: '0000 1111' });
    expect(JSON.parse(accepted?.[0]?.json ?? '')).toEqual(own);
  });

  it('refuses a sealed file that was changed since', async () => {
    const { refused } = await examine([file('club.pack', sealed.replace('Pack club', 'Pack blub'))], [trade]);
    expect(refused?.[0]?.issues).toHaveLength(1);
  });

  it('installs nothing where one of several files is bad, and names that file with its issues', async () => {
    const bad = text('club').replace('"edition":1', '"edition":"one"');
    const examined = await examine([file('good.json', text('other')), file('bad.json', bad)], [trade]);
    expect(examined.accepted).toBeUndefined();
    expect(examined.refused).toHaveLength(1);
    expect(examined.refused?.[0]?.file).toBe('bad.json');
    expect(examined.refused?.[0]?.issues[0]?.path).toBe('about.edition');
  });

  it('refuses a file that can’t be read, with the reason that reading gave', async () => {
    const issue = { path: '', what: 'too large', expected: 'a smaller one' };
    const examined = await examine([{ name: 'big.json', read: async () => issue }], [trade]);
    expect(examined.refused).toEqual([{ file: 'big.json', issues: [issue] }]);
  });

  it.each([
    ['an older edition', [file('a.json', text('club', 1))], [club(2)], 'about.edition'],
    ['the shipped pack’s id', [file('a.json', text('trade', 9))], [], 'about.id'],
    ['one id twice', [file('a.json', text('x')), file('b.json', text('x', 2))], [], 'about.id'],
  ])('refuses %s', async (_what, files, shelf, path) => {
    const { refused } = await examine(files, [trade, ...shelf]);
    expect(refused?.flatMap(({ issues }) => issues.map((issue) => issue.path))).toEqual([path]);
  });

  it('takes the same edition again: an author tries things out', async () => {
    const { accepted } = await examine([file('a.json', text('club', 1))], [club(1)]);
    expect(accepted?.[0]?.replaces?.edition).toBe(1);
  });

  it('tells which file is checked, once it has been read', async () => {
    const told: string[] = [];
    const read = async () => {
      told.push('read');
      return text('club');
    };
    await examine([{ name: 'a.json', read }], [], (name) => told.push(name));
    expect(told).toEqual(['read', 'a.json']);
  });
});
