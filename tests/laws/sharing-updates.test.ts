import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Pack } from '../../src/pack/schema/index';
import { applyUpdate, writeUpdate } from '../../src/sharing/propose/update-file';
import { type OpenedSeal, openSealed } from '../../src/sharing/seal/open-seal';
import { founded, sealPack } from '../../src/sharing/seal/seal';
import { largePack } from '../unit/sharing/support/large-pack';
import { pack } from './pack-arbitrary/pack';
import { PATIENCE, TIMES } from './pack-arbitrary/times';

const asRead = <T>(whole: T): T => JSON.parse(JSON.stringify(whole)) as T;
const keys = (await crypto.subtle.generateKey('Ed25519', true, ['sign', 'verify'])) as CryptoKeyPair;

async function edition(whole: Pack, number: number): Promise<{ sealed: string; opened: OpenedSeal }> {
  const own = await founded({ ...whole, about: { ...whole.about, id: 'pack', edition: number } }, keys);
  const sealed = await sealPack(own, keys);
  const opened = await openSealed(sealed);
  if (opened.issues) throw new Error(JSON.stringify(opened.issues[0]));
  return { sealed, opened };
}

/** References of a pack to itself in full would lead to another id. */
const some = pack.map((whole) => asRead({ ...whole, about: { ...whole.about, extends: 'elsewhere' } }));

describe('an update', PATIENCE, () => {
  test('makes the very file of the next edition out of the one before', async () => {
    await fc.assert(
      fc.asyncProperty(some, some, async (one, other) => {
        const [before, after] = [await edition(one, 1), await edition(other, 2)];
        const update = await writeUpdate(before.opened.pack, after.sealed);
        expect(applyUpdate(update, before.opened)).toEqual({ sealed: after.sealed });
      }),
      { numRuns: 50 * TIMES },
    );
  });

  test('makes nothing that opens with one character changed, or out of another edition', async () => {
    const before = await edition(largePack(20, 60), 1);
    const changed = asRead(largePack(20, 60));
    changed.models![3]!.number = 77;
    changed.serials!.runs.year![5] = 1931;
    const after = await edition(changed, 2);
    const update = await writeUpdate(before.opened.pack, after.sealed);
    expect(applyUpdate(update, after.opened)).toEqual({ problem: 'another-edition' });
    await fc.assert(
      fc.asyncProperty(fc.nat(update.length - 1), fc.integer({ min: 32, max: 126 }), async (at, code) => {
        fc.pre(update.charCodeAt(at) !== code);
        const harmed = update.slice(0, at) + String.fromCharCode(code) + update.slice(at + 1);
        const made = applyUpdate(harmed, before.opened);
        // What opens is exactly what was sealed, or nothing.
        const opens = made.problem === undefined && !(await openSealed(made.sealed)).issues;
        if (opens) expect(made.sealed).toBe(after.sealed);
      }),
      { numRuns: 300 * TIMES },
    );
  });
});
