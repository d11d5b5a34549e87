import { afterAll, beforeAll, expect, it } from 'vitest';
import { mustPass, tryFile, workshop } from '../../mutation/try-mutants';

/** A test that can't fail is none: changes to these sources have to be noticed. `npm run mutants` tries all of them. */
const SOURCES = [
  'src/claims/stance.ts',
  'src/claims/denied-list.ts',
  'src/claims/triggers-in.ts',
  'src/claims/subject.ts',
  'src/claims/names.ts',
  'src/audit/assertions.ts',
  'src/audit/claims-held.ts',
  'src/audit/checks/claim-fact.ts',
  'src/audit/checks/serial-model.ts',
  'src/audit/checks/weight.ts',
];
const EACH = 2;
/** The others make no difference to anybody. */
const NOTICED = 0.75;

let shop: ReturnType<typeof workshop>;
beforeAll(() => {
  shop = workshop();
  mustPass(shop.root);
}, 300_000);
afterAll(() => shop?.close());

it('unit tests notice what is changed in the sources that accuse', { timeout: 1_800_000 }, () => {
  const tried = SOURCES.flatMap((file) => tryFile(shop.root, file, EACH));
  const missed = tried.filter(({ noticed }) => !noticed);
  expect(tried).toHaveLength(SOURCES.length * EACH);
  expect(
    missed.length,
    missed.map(({ file, mutant }) => `${file}:${mutant.line}: ${mutant.change}`).join('\n'),
  ).toBeLessThanOrEqual(tried.length * (1 - NOTICED));
});
