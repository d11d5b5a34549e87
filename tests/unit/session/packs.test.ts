import { describe, expect, it } from 'vitest';
import { examine } from '../../../src/session/install';
import { knowledgeOf, shelved } from '../../../src/session/packs';

function packText(id: string, edition = 1): string {
  return JSON.stringify({
    schema: 1,
    about: {
      id,
      title: `Pack ${id}`,
      edition,
      licence: 'CC0',
      language: 'en',
      covers: { thing: 'sewing machine', words: ['sewing machine'] },
    },
  });
}

const kept = (id: string, edition = 1, text = packText(id, edition)) => ({
  id,
  edition,
  text,
  installedAt: '2026-06-01T10:00:00.000Z',
});
const shipped = [{ file: 'trade.json', text: packText('trade') }];
const shelf = (packs = [kept('club')], switches: [string, boolean][] = []) =>
  shelved(shipped, { packs, switches: new Map(switches) });

describe('the shelf', () => {
  it('lists the shipped pack first, then the others by id; all are on unless switched off', () => {
    const listed = shelf([kept('zeta'), kept('alpha')], [['zeta', false]]);
    expect(listed.map(({ id, shipped, on }) => [id, shipped, on])).toEqual([
      ['trade', true, true],
      ['alpha', false, true],
      ['zeta', false, false],
    ]);
  });

  it('lets only packs speak that are on', () => {
    const ids = (switches: [string, boolean][]) =>
      knowledgeOf(shelf([kept('club')], switches)).packs.map(({ id }) => id);
    expect(ids([])).toEqual(['trade', 'club']);
    expect(ids([['trade', false]])).toEqual(['club']);
    expect(
      ids([
        ['trade', false],
        ['club', false],
      ]),
    ).toEqual([]);
  });

  it('keeps a pack that it can’t read on the list, with what is wrong, and silent', () => {
    const listed = shelf([kept('club', 1, '{"schema":2}')]);
    const club = listed.find(({ id }) => id === 'club');
    expect(club?.pack).toBeNull();
    expect(club?.issues.length).toBeGreaterThan(0);
    expect(knowledgeOf(listed).packs.map(({ id }) => id)).toEqual(['trade']);
  });

  it('never lets an installed pack stand in for the shipped one', () => {
    expect(shelf([kept('trade', 99)]).map(({ id, edition }) => [id, edition])).toEqual([['trade', 1]]);
  });
});

describe('examining chosen files', () => {
  const file = (name: string, text: string) => ({ name, text });

  it('accepts sound packs, and says which edition they replace', () => {
    const examined = examine([file('a.json', packText('club', 2)), file('b.json', packText('other'))], shelf());
    expect(examined.accepted?.map(({ pack, replaces }) => [pack.about.id, replaces])).toEqual([
      ['club', 1],
      ['other', null],
    ]);
  });

  it('installs nothing where one of several files is bad, and names that file with its issues', () => {
    const bad = packText('club').replace('"edition":1', '"edition":"one"');
    const examined = examine([file('good.json', packText('other')), file('bad.json', bad)], shelf());
    expect(examined.accepted).toBeUndefined();
    expect(examined.refused).toHaveLength(1);
    expect(examined.refused?.[0]?.file).toBe('bad.json');
    expect(examined.refused?.[0]?.issues[0]?.path).toBe('about.edition');
  });

  it.each([
    ['an older edition', [file('a.json', packText('club', 1))], [kept('club', 2)], 'about.edition'],
    ['the shipped pack’s id', [file('a.json', packText('trade', 9))], [], 'about.id'],
    ['one id twice', [file('a.json', packText('x')), file('b.json', packText('x', 2))], [], 'about.id'],
  ])('refuses %s', (_what, files, packs, path) => {
    const examined = examine(files, shelf(packs));
    expect(examined.refused?.flatMap(({ issues }) => issues.map((issue) => issue.path))).toEqual([path]);
  });

  it('takes the same edition again: an author tries things out', () => {
    expect(examine([file('a.json', packText('club', 1))], shelf()).accepted?.[0]?.replaces).toBe(1);
  });
});
