import { describe, expect, it } from 'vitest';
import {
  addressBeside,
  LARGEST_NOTICE,
  MOST_CHANGES,
  type Notice,
  readNotice,
} from '../../../../src/sharing/subscribe/notice';

const hash = (digit: string) => digit.repeat(64);
const notice: Notice = {
  ...{ notice: 1, pack: 'club', edition: 3, file: { sha256: hash('a'), bytes: 10 } },
  changes: [{ from: 2, file: { sha256: hash('b'), bytes: 5 } }],
};

describe('a notice', () => {
  it('is read, whatever a later version has added', () => {
    expect(readNotice(JSON.stringify({ ...notice, later: true }))).toEqual(notice);
  });

  it.each([
    ['no JSON', '{'],
    ['another format', JSON.stringify({ ...notice, notice: 2 })],
    ['no id', JSON.stringify({ ...notice, pack: '../club' })],
    ['edition nought', JSON.stringify({ ...notice, edition: 0 })],
    ['a broken edition', JSON.stringify({ ...notice, edition: 1.5 })],
    ['a file name that leads elsewhere', JSON.stringify({ ...notice, file: { sha256: '../../x', bytes: 1 } })],
    ['capitals in a hash', JSON.stringify({ ...notice, file: { sha256: hash('A'), bytes: 1 } })],
    [
      'a list of changes without end',
      JSON.stringify({ ...notice, changes: Array(MOST_CHANGES + 1).fill(notice.changes[0]) }),
    ],
    ['a list', '[]'],
    ['nothing', 'null'],
  ])('is not read from %s', (_what, text) => {
    expect(readNotice(text)).toBeNull();
  });

  it('with as many changes as it may name is no larger than what is fetched', () => {
    const full = {
      ...notice,
      pack: 'x'.repeat(80),
      edition: 2 ** 50,
      changes: Array(MOST_CHANGES).fill({ from: 2 ** 50, file: { sha256: hash('b'), bytes: 1e8 } }),
    };
    expect(readNotice(JSON.stringify(full))).not.toBeNull();
    expect(JSON.stringify(full).length).toBeLessThan(LARGEST_NOTICE);
  });

  it('names files that stand beside it', () => {
    expect(addressBeside('https://packs.example/clubs/a.notice.json?x=1', notice.file, 'pack')).toBe(
      `https://packs.example/clubs/${hash('a')}.pack`,
    );
    expect(addressBeside('https://packs.example', notice.file, 'changes')).toBe(
      `https://packs.example/${hash('a')}.changes`,
    );
  });
});
