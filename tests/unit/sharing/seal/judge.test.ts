import { describe, expect, it } from 'vitest';
import { judge, judgeUnsealed, type KnownPack } from '../../../../src/sharing/seal/judge';
import { changeKey, type KeyChange } from '../../../../src/sharing/seal/key-change';
import { keyHash } from '../../../../src/sharing/seal/key-hash';
import { type OpenedSeal, openSealed } from '../../../../src/sharing/seal/open-seal';
import { founded, type SealOptions, sealPack } from '../../../../src/sharing/seal/seal';
import { publicKeyOf, type SigningKeys } from '../../../../src/sharing/seal/signature';
import { smallPack } from '../../pack/support/packs';

const makePair = () => crypto.subtle.generateKey('Ed25519', true, ['sign', 'verify']) as Promise<CryptoKeyPair>;
const [one, two, three] = [await makePair(), await makePair(), await makePair()];
const first = await founded(smallPack(), one);
const { id } = first.about;

async function opened(
  edition: number,
  keys: SigningKeys = one,
  options: SealOptions = {},
  note?: string,
): Promise<OpenedSeal> {
  const about = { ...first.about, edition, ...(note ? { note } : {}) };
  const result = await openSealed(await sealPack({ ...first, about }, keys, options));
  if (result.issues) throw new Error(result.problem);
  return result;
}

async function known(edition: number, keys: SigningKeys = one, options: SealOptions = {}): Promise<KnownPack> {
  return (await judge(null, await opened(edition, keys, options))).remember!;
}

const handover: KeyChange = await changeKey(id, 3, one, two);

describe('an opened file', () => {
  it('of a pack that was never seen is taken, and its key is pinned', async () => {
    const file = await opened(4);
    expect(await judge(null, file)).toEqual({
      ...{ verdict: 'first', accepted: true, reason: null, changes: [] },
      remember: { id, key: await publicKeyOf(one), edition: 4, hash: file.hash, next: null, earlier: [] },
    });
  });

  it('of a later edition by the pinned key is taken; the very one that is known changes nothing', async () => {
    expect(await judge(await known(2), await opened(3))).toMatchObject({ verdict: 'newer', accepted: true });
    const same = await known(2);
    expect(await judge(same, await opened(2))).toMatchObject({ verdict: 'same', accepted: true, remember: same });
  });

  it('of an earlier edition is a rollback', async () => {
    const now = await known(3);
    expect(await judge(now, await opened(2))).toMatchObject({ verdict: 'rollback', accepted: false, remember: now });
  });

  it('of the same edition with other words is a fork', async () => {
    expect(await judge(await known(3), await opened(3, one, {}, 'Other words'))).toMatchObject({
      verdict: 'fork',
      accepted: false,
    });
  });

  it('that follows another edition of the known number is a fork', async () => {
    const other = await opened(3, one, {}, 'Other words');
    const previous = { edition: 3, hash: other.hash };
    expect(await judge(await known(3), await opened(4, one, { previous }))).toMatchObject({ verdict: 'fork' });
    expect(await judge((await judge(null, other)).remember, await opened(4, one, { previous }))).toMatchObject({
      verdict: 'newer',
    });
  });

  it('by a key to which the pinned one was handed over is taken, and the new key is pinned', async () => {
    const file = await opened(3, two, { history: [handover] });
    const judged = await judge(await known(2), file);
    expect(judged).toMatchObject({ verdict: 'key-changed', accepted: true, changes: [handover] });
    expect(judged.remember).toMatchObject({ key: await publicKeyOf(two), earlier: [await publicKeyOf(one)] });
    const again = await changeKey(id, 5, two, three);
    const later = await judge(judged.remember, await opened(6, three, { history: [handover, again] }));
    expect(later).toMatchObject({ verdict: 'key-changed', changes: [again] });
    // Two handovers at once, for a reader who missed an edition.
    const both = await judge(await known(2), await opened(6, three, { history: [handover, again] }));
    expect(both.changes).toEqual([handover, again]);
    expect(both.remember?.earlier).toEqual([await publicKeyOf(one), await publicKeyOf(two)]);
  });

  it('by the old key after a handover is a rollback or, of a later edition, a fork', async () => {
    const now = await known(3, two, { history: [handover] });
    const { remember } = await judge(await known(2), await opened(3, two, { history: [handover] }));
    expect(await judge(remember, await opened(2))).toMatchObject({ verdict: 'rollback' });
    expect(await judge(remember, await opened(5))).toMatchObject({ verdict: 'fork' });
    // Who came later never knew the old key.
    expect(await judge(now, await opened(5))).toMatchObject({ verdict: 'refused', reason: 'another-key' });
  });

  it('with a handover from before an edition that the old key sealed is a fork', async () => {
    expect(await judge(await known(3), await opened(4, two, { history: [handover] }))).toMatchObject({
      verdict: 'fork',
    });
  });

  it('by a key to which nothing was handed over is refused', async () => {
    const stranger = { ...(await opened(5)), key: await publicKeyOf(three) };
    expect(await judge(await known(2), stranger)).toMatchObject({ verdict: 'refused', reason: 'another-key' });
  });

  it('of another pack is refused', async () => {
    const other = await known(2);
    expect(await judge({ ...other, id: 'another' }, await opened(3))).toMatchObject({ reason: 'another-pack' });
  });

  it('that is unsealed takes no sealed pack’s place', async () => {
    expect(judgeUnsealed(await known(2), id)).toMatchObject({ verdict: 'refused', reason: 'unsealed' });
    expect(judgeUnsealed(null, id)).toMatchObject({ verdict: 'refused', reason: 'unsealed' });
    expect(judgeUnsealed(null, 'small')).toMatchObject({ accepted: true });
  });
});

describe('a key that was committed to', () => {
  const next = async () => ({ next: await keyHash(await publicKeyOf(two)) });

  it('is the only one that can follow', async () => {
    const now = await known(2, one, await next());
    expect(await judge(now, await opened(3, two, { history: [handover] }))).toMatchObject({ verdict: 'key-changed' });
    const thief = await changeKey(id, 3, one, three);
    const stolen = await judge(now, await opened(3, three, { history: [thief] }));
    expect(stolen).toMatchObject({ verdict: 'refused', reason: 'not-the-next-key' });
  });

  it('can be neither dropped nor exchanged while the key stays', async () => {
    const now = await known(2, one, await next());
    expect(await judge(now, await opened(3, one, await next()))).toMatchObject({ verdict: 'newer' });
    expect(await judge(now, await opened(3))).toMatchObject({ reason: 'next-changed' });
    const other = { next: await keyHash(await publicKeyOf(three)) };
    expect(await judge(now, await opened(3, one, other))).toMatchObject({ reason: 'next-changed' });
  });
});

describe('a seal', () => {
  it('holds only with a history that leads from the key in the pack’s id', async () => {
    const refused = async (keys: SigningKeys, history: KeyChange[], edition = 4) => {
      await expect(sealPack({ ...first, about: { ...first.about, edition } }, keys, { history })).rejects.toThrow(
        TypeError,
      );
    };
    await refused(two, []);
    await refused(three, [handover]);
    await refused(one, [handover]);
    await refused(two, [handover], 2);
    await refused(two, [{ ...handover, edition: 2 }]);
    await refused(two, [{ ...handover, old: handover.new }]);
    await refused(two, [await changeKey('another', 3, one, two)]);
    await refused(three, [handover, await changeKey(id, 3, two, three)]);
    await refused(one, [handover, await changeKey(id, 4, two, one)]);
  });

  it('says until when it holds, which key comes next and what came before', async () => {
    const options = {
      expires: '2027-03-31',
      next: await keyHash('AA'),
      previous: { edition: 1, hash: 'ab'.repeat(32) },
    };
    expect(await opened(2, one, options)).toMatchObject(options);
  });
});
