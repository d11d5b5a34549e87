import { describe, expect, it } from 'vitest';
import { againstKnown, isOver, type KnownEditions } from '../../../../src/sharing/subscribe/against-known';
import type { Notice } from '../../../../src/sharing/subscribe/notice';

const file = (digit: string) => ({ sha256: digit.repeat(64), bytes: 10 });
const notice = (edition: number, change: Partial<Notice> = {}): Notice => ({
  ...{ notice: 1, pack: 'club', edition, file: file('a'), changes: [] },
  ...change,
});
const known: KnownEditions = {
  ...{ pack: 'club', active: 5, highest: 5, file: file('a').sha256, expires: null },
};
const TODAY = '2026-06-15';

describe('what a notice says against what is known', () => {
  it.each([
    ['a newer edition', notice(6), known, 'newer'],
    ['the same edition', notice(5), known, 'same'],
    ['an edition that was left behind already', notice(4), known, 'older'],
    ['the edition from which the user went back', notice(5), { ...known, active: 3 }, 'newer'],
    ['one between the used and the highest edition', notice(4), { ...known, active: 3 }, 'older'],
    ['another file under a number that was seen', notice(5, { file: file('b') }), known, 'other-text'],
    ['a file that came in another way', notice(5, { file: file('b') }), { ...known, file: null }, 'same'],
    ['another pack', notice(6, { pack: 'other' }), known, 'other-pack'],
    ['the same although its time is over', notice(5), { ...known, expires: '2026-06-14' }, 'overdue'],
    ['the same on its last day', notice(5), { ...known, expires: TODAY }, 'same'],
    ['a newer one after the time of the one in use', notice(6), { ...known, expires: '2026-01' }, 'newer'],
  ])('%s', (_what, said, knows, expected) => {
    expect(againstKnown(said, knows, TODAY)).toBe(expected);
  });
});

it('a month is over on the first of the next, a year on the first of January', () => {
  expect([isOver('2026-06', TODAY), isOver('2026-05', TODAY), isOver('2026', TODAY), isOver('2025', TODAY)]).toEqual([
    ...[false, true, false, true],
  ]);
});
