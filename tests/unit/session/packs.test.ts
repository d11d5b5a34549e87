import { describe, expect, it } from 'vitest';
import { openText } from '../../../src/session/open-text';
import { cardOf, titleOf } from '../../../src/session/pack-card';
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

const kept = (id: string, edition = 1, text = packText(id, edition), sealedBy: string | null = null) => ({
  kept: { id, edition, installedAt: '2026-06-01T10:00:00.000Z', sealedBy },
  ...openText(text),
});
const shipped = [{ file: 'trade.json', ...openText(packText('trade')) }];
const shelf = (packs = [kept('club')], switches: [string, boolean][] = []) =>
  shelved(shipped, packs, new Map(switches));

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
    expect(club?.parts).toBeNull();
    expect(club?.issues.length).toBeGreaterThan(0);
    expect(knowledgeOf(listed).packs.map(({ id }) => id)).toEqual(['trade']);
  });

  it('says who sealed each pack, on the shelf and in the audit', () => {
    const listed = shelf([kept('club', 1, packText('club'), '0a1b 2c3d'), kept('other')]);
    expect(listed.map(({ id, sealedBy }) => [id, sealedBy])).toEqual([
      ['trade', null],
      ['club', '0a1b 2c3d'],
      ['other', null],
    ]);
    expect(knowledgeOf(listed).packs.map(({ sealedBy }) => sealedBy)).toEqual([null, '0a1b 2c3d', null]);
  });

  it('is shown by cards that hold what is shown and not the pack', () => {
    const [, club] = shelf([kept('club', 3)]).map(cardOf);
    expect(club).toMatchObject({ id: 'club', edition: 3, about: { title: 'Pack club', models: 0, runs: 0 } });
    expect(club).not.toHaveProperty('parts');
    const [, broken] = shelf([kept('club', 1, '{')]).map(cardOf);
    expect(broken?.about).toBeNull();
    expect(broken && titleOf(broken)).toBe('club');
  });

  it('never lets an installed pack stand in for the shipped one', () => {
    expect(shelf([kept('trade', 99)]).map(({ id, edition }) => [id, edition])).toEqual([['trade', 1]]);
  });
});
