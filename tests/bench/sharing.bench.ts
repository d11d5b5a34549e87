import type { Pack } from '../../src/pack/schema/index';
import { applyChanges } from '../../src/sharing/propose/apply-changes';
import { diffPacks } from '../../src/sharing/propose/diff-packs';
import { openSealed } from '../../src/sharing/seal/open-seal';
import { founded, sealPack } from '../../src/sharing/seal/seal';
import { largePack } from '../unit/sharing/support/large-pack';
import type { Benchmark } from './benchmark';

/** A pack and its next edition: 50 models and 50 runs changed, a thousand runs in another place. */
function editions(runs: number): [Pack, Pack] {
  const [before, after] = [largePack(runs / 20, runs), largePack(runs / 20, runs)];
  for (let i = 0; i < 50; i++) {
    after.models![(i * runs) / 1000]!.number = 7;
    after.serials!.runs.year![(i * runs) / 50] = 1999;
  }
  for (const column of ['scheme', 'first', 'last', 'models', 'year'] as const) {
    const values = after.serials!.runs[column] as unknown[];
    values.push(...values.splice(1000, 1000));
  }
  return [before, after];
}

/** Twice the runs should take about twice as long. */
export const benchmarks: Benchmark[] = [50_000, 100_000, 200_000].flatMap((count) => {
  const size = `${count.toLocaleString('en')} runs and ${(count / 20).toLocaleString('en')} models`;
  let made: { packs: [Pack, Pack]; changes: ReturnType<typeof diffPacks>; sealed: Promise<string> } | undefined;
  const of = () => {
    if (made) return made;
    const packs = editions(count);
    const sealed = crypto.subtle
      .generateKey('Ed25519', true, ['sign', 'verify'])
      .then(async (keys) => sealPack(await founded(packs[0], keys as CryptoKeyPair), keys as CryptoKeyPair));
    made = { packs, changes: diffPacks(...packs), sealed };
    return made;
  };
  return [
    { name: `sharing: what differs between two editions of ${size}`, run: () => diffPacks(...of().packs) },
    {
      name: `sharing: making these changes to ${size}`,
      run: () => {
        const { packs, changes } = of();
        return applyChanges(packs[0], changes);
      },
    },
    { name: `sharing: opening a sealed pack of ${size}`, run: async () => openSealed(await of().sealed) },
  ];
});
