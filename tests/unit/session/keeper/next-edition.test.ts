import { beforeAll, describe, expect, it } from 'vitest';
import type { KeptKnown } from '../../../../src/keep/schema';
import type { Pack } from '../../../../src/pack/schema/index';
import { openDesk } from '../../../../src/session/keeper/desk';
import { nextEdition } from '../../../../src/session/keeper/next-edition';
import { canonicalJson } from '../../../../src/sharing/seal/canonical';
import { judge } from '../../../../src/sharing/seal/judge';
import { openSealed } from '../../../../src/sharing/seal/open-seal';
import { founded, sealPack } from '../../../../src/sharing/seal/seal';
import { smallPack } from '../../pack/support/packs';

let keys: CryptoKeyPair;
let own: Pack;
beforeAll(async () => {
  keys = (await crypto.subtle.generateKey('Ed25519', true, ['sign', 'verify'])) as CryptoKeyPair;
  own = await founded(smallPack(), keys);
});
const AT = '2026-06-15T10:00:00.000Z';
const numbered = (edition: number, about: Partial<Pack['about']> = {}): Pack => {
  return { ...own, about: { ...own.about, ...about, edition } };
};
async function knownOf(pack: Pack, next: string | null = null): Promise<KeptKnown> {
  const opened = await openSealed(await sealPack(pack, keys, { next }));
  if (opened.issues) throw new Error('not opened');
  return (await judge(null, opened)).remember!;
}
async function following(pack: Pack, known: KeptKnown | null) {
  const desk = await openDesk(pack, { id: pack.about.id, proposals: [], decisions: [], published: null });
  const edition = await nextEdition(pack, canonicalJson(pack)!, desk, keys, known, AT);
  const opened = await openSealed(edition.files.find(({ name }) => name.endsWith('.pack'))!.text);
  if (opened.issues) throw new Error('not opened');
  return { edition, opened };
}

describe('the next edition', () => {
  it('has the next number, and whoever knew the one before takes it', async () => {
    const known = await knownOf(numbered(5));
    const { edition, opened } = await following(numbered(5), known);
    expect([edition.pack.edition, opened.edition]).toEqual([6, 6]);
    expect(await judge(known, opened)).toMatchObject({ verdict: 'newer' });
  });

  it('has a number above all that were seen, where the keeper has gone back to an earlier one', async () => {
    const known = await knownOf(numbered(7));
    const { edition, opened } = await following(numbered(5), known);
    expect(edition.known.edition).toBe(8);
    expect(await judge(known, opened)).toMatchObject({ verdict: 'newer' });
  });

  it('keeps the key that was committed to as the next one', async () => {
    const known = await knownOf(numbered(5), 'A'.repeat(43));
    const { edition, opened } = await following(numbered(5), known);
    expect(edition.known.next).toBe('A'.repeat(43));
    expect(await judge(known, opened)).toMatchObject({ verdict: 'newer' });
  });

  it.each([
    ['one that has passed was the edition before’s', '2026-05', undefined, null],
    ['one that is to come stays', '2026-12', '2026-12', '2026-12-31'],
  ])('lasts as long as it says itself: %s', async (_what, expires, said, last) => {
    const { edition, opened } = await following(numbered(5, { expires }), await knownOf(numbered(5)));
    expect([opened.pack.about.expires, opened.expires, edition.pack.expires]).toEqual([said, last, last]);
  });
});
