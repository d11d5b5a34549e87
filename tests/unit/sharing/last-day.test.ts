import { expect, it } from 'vitest';
import { lastDay } from '../../../src/sharing/last-day';
import { openPackFile } from '../../../src/sharing/open-file';
import { founded, sealPack } from '../../../src/sharing/seal/seal';
import { smallPack } from '../pack/support/packs';

it.each([
  ['neither says one', undefined, null, null],
  ['the seal alone', undefined, '2026-06-15', '2026-06-15'],
  ['the pack alone', '2026-06-15', null, '2026-06-15'],
  ['a month lasts to its end', '2026-06', null, '2026-06-30'],
  ['so does February', '2026-02', null, '2026-02-28'],
  ['and that of a leap year', '2028-02', null, '2028-02-29'],
  ['and of a century that is none', '2100-02', null, '2100-02-28'],
  ['a year lasts to its end', '2026', null, '2026-12-31'],
  ['the pack is earlier', '2026-06-14', '2026-06-15', '2026-06-14'],
  ['the seal is earlier', '2026-06', '2026-06-15', '2026-06-15'],
  ['the seal comes after the month', '2026-05', '2026-06-15', '2026-05-31'],
])('%s', (_what, expires, sealed, expected) => {
  expect(lastDay({ ...(expires === undefined ? {} : { expires }) }, sealed)).toBe(expected);
});

it('is the same by whichever door a file comes: plain, sealed with a day, or sealed without', async () => {
  const keys = (await crypto.subtle.generateKey('Ed25519', true, ['sign', 'verify'])) as CryptoKeyPair;
  const plain = smallPack({}, { expires: '2026-06' });
  const own = await founded(plain, keys);
  const sealed = (expires: string | null) => sealPack(own, keys, { expires });
  const files = [JSON.stringify(plain), await sealed(null), await sealed('2026-07-01'), await sealed('2026-06-01')];
  const opened = await Promise.all(files.map(openPackFile));
  expect(opened.map((each) => each.pack && each.expires)).toEqual([
    ...['2026-06-30', '2026-06-30', '2026-06-30', '2026-06-01'],
  ]);
});
