import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compile } from '../../src/pack/compile';
import { MOST_ISSUES } from '../../src/pack/issues';
import { parsePack } from '../../src/pack/parse';
import { changed } from './pack-arbitrary/changed';
import { pack } from './pack-arbitrary/pack';
import { PATIENCE, TIMES } from './pack-arbitrary/times';

describe('parsePack', PATIENCE, () => {
  test('takes every pack that is in order, and gives it back as it was', () => {
    fc.assert(
      fc.property(pack, (whole) => {
        const text = JSON.stringify(whole);
        expect(parsePack(text)).toStrictEqual({ pack: JSON.parse(text) });
      }),
      { numRuns: 300 * TIMES },
    );
  });

  test('never throws, whatever the text', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: 'binary' }), fc.string(), fc.json()), (text) => {
        hasIssues(text);
      }),
      { numRuns: 1000 * TIMES },
    );
  });

  test("never throws, whatever JSON stands in a pack's parts", () => {
    const parts = [
      'schema',
      'about',
      'attributes',
      'families',
      'models',
      'types',
      'serials',
      'wording',
      'prices',
      'cautions',
      'photographs',
      'terms',
      'places',
    ];
    const keys = fc.constantFrom(
      ...parts,
      'id',
      'label',
      'names',
      'facts',
      'is',
      'when',
      'words',
      'means',
      'runs',
      'kind',
      '__proto__',
      'constructor',
      'x-a',
    );
    const { value } = fc.letrec<{ value: unknown }>((tie) => ({
      value: fc.oneof(
        { maxDepth: 5, withCrossShrink: true },
        fc.oneof(fc.constantFrom(1, 'a', 'choice', null, true), fc.jsonValue({ maxDepth: 1 })),
        fc.array(tie('value'), { maxLength: 3 }),
        fc.dictionary(keys, tie('value'), { maxKeys: 5, noNullPrototype: true }),
      ),
    }));
    fc.assert(
      fc.property(fc.dictionary(fc.constantFrom(...parts), value, { noNullPrototype: true }), (data) => {
        hasIssues(JSON.stringify(data));
      }),
      { numRuns: 1000 * TIMES },
    );
  });

  test('of a pack with something changed it tells what is wrong, or takes what compiles', () => {
    fc.assert(
      fc.property(changed(pack), (data) => {
        const text = JSON.stringify(data);
        const read = parsePack(text);
        if (read.pack) compile([read.pack]);
        else hasIssues(text);
      }),
      { numRuns: 300 * TIMES },
    );
  });

  function hasIssues(text: string): void {
    const { issues } = parsePack(text);
    // Chance alone writes no pack: its "about" has too many parts.
    expect(issues?.length).toBeGreaterThan(0);
    expect(issues?.length).toBeLessThanOrEqual(MOST_ISSUES);
    for (const { path, what, expected } of issues ?? []) {
      expect(expected).not.toBe('');
      expect(what).not.toBe('');
      expect(`${path}${what}${expected}`).not.toMatch(/[\p{Cc}\p{Cf}]/u);
      expect(what.length).toBeLessThan(400);
    }
  }
});

describe('compile', PATIENCE, () => {
  test('takes every pack that was read, alone and beside another', () => {
    fc.assert(
      fc.property(pack, pack, (one, other) => {
        const read = [one, other].map((whole) => parsePack(JSON.stringify(whole)).pack!);
        const alone = compile([read[0]!]);
        const beside = compile(read);
        expect(alone.models.size).toBe((one.models?.length ?? 0) + (one.types?.length ?? 0));
        // What stands beside a pack takes nothing from it and adds nothing to it.
        if (one.about.id !== other.about.id)
          for (const [ref, model] of alone.models) {
            const there = beside.models.get(ref)!;
            expect([...there.facts.keys()]).toEqual(expect.arrayContaining([...model.facts.keys()]));
            for (const attribute of model.facts.keys())
              expect(there.facts.get(attribute)?.length).toBe(model.facts.get(attribute)?.length);
          }
      }),
      { numRuns: 150 * TIMES },
    );
  });

  test('changes nothing in the packs it is given', () => {
    fc.assert(
      fc.property(pack, (whole) => {
        const read = parsePack(JSON.stringify(whole)).pack!;
        const before = JSON.stringify(read);
        compile([read]);
        expect(JSON.stringify(read)).toBe(before);
      }),
      { numRuns: 100 * TIMES },
    );
  });
});
