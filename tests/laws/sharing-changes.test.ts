import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parsePack } from '../../src/pack/parse';
import type { Pack } from '../../src/pack/schema/index';
import { applyChanges } from '../../src/sharing/propose/apply-changes';
import { diffPacks } from '../../src/sharing/propose/diff-packs';
import { fullPack, smallPack } from '../unit/pack/support/packs';
import { changed } from './pack-arbitrary/changed';
import { pack } from './pack-arbitrary/pack';
import { PATIENCE, TIMES } from './pack-arbitrary/times';

/** JSON knows no undefined and no shared objects: packs as they come from files. */
const asRead = (whole: unknown): Pack => JSON.parse(JSON.stringify(whole)) as Pack;

/** A pack and another one that was made of it by editing: both in order. */
const edited = fc
  .tuple(pack, fc.array(fc.nat(), { maxLength: 2 }))
  .map(([whole]) => asRead(whole))
  .chain((whole) =>
    changed(fc.constant(whole)).map((other) => {
      const { pack: read } = parsePack(JSON.stringify(other));
      return [whole, read ?? whole] as const;
    }),
  );

describe('what differs between two packs', PATIENCE, () => {
  test('makes of the first exactly the second, of any two', () => {
    fc.assert(
      fc.property(fc.oneof(fc.tuple(pack, pack), edited), ([one, other]) => {
        const [before, after] = [asRead(one), asRead(other)];
        const changes = asRead(diffPacks(before, after)) as unknown as ReturnType<typeof diffPacks>;
        const applied = applyChanges(before, changes);
        expect(applied.misfits).toEqual([]);
        expect(applied.pack).toEqual(after);
        expect(before).toEqual(asRead(one));
      }),
      { numRuns: 200 * TIMES },
    );
  });

  test('is nothing of a pack and itself', () => {
    fc.assert(
      fc.property(pack, (whole) => {
        expect(diffPacks(asRead(whole), asRead(whole))).toEqual([]);
      }),
      { numRuns: 50 * TIMES },
    );
  });

  test('between the least and the fullest pack goes both ways', () => {
    const [small, full] = [asRead(smallPack()), asRead(fullPack())];
    expect(applyChanges(small, diffPacks(small, full)).pack).toEqual(full);
    expect(applyChanges(full, diffPacks(full, small)).pack).toEqual(small);
  });

  test('made twice is made once', () => {
    fc.assert(
      fc.property(edited, ([before, after]) => {
        const changes = diffPacks(before, after);
        const again = applyChanges(applyChanges(before, changes).pack, changes);
        expect(again.pack).toEqual(after);
        expect(again.misfits).toEqual([]);
      }),
      { numRuns: 100 * TIMES },
    );
  });
});
