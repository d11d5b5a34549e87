import type { Pack } from '../../../../src/pack/schema/index';
import { smallPack } from '../../pack/support/packs';

/** A pack of so many invented models and serial runs, as large clubs would have them. */
export function largePack(models: number, runs: number): Pack {
  const every = <T>(count: number, of: (i: number) => T): T[] => Array.from({ length: count }, (_, i) => of(i));
  const number = (n: number): string => `K${String(n).padStart(8, '0')}`;
  return smallPack({
    attributes: [
      { id: 'frame', kind: 'choice', label: 'Frame', values: ['iron', 'alloy'].map((id) => ({ id, label: id })) },
      { id: 'weight', kind: 'measure', label: 'Weight', unit: 'kg' },
    ],
    models: every(models, (i) => ({
      ...{ id: `model-${i}`, label: `Number ${i}`, names: [`Number ${i}`], made: { from: 1900 + (i % 60) } },
      ...{
        number: 1000 + i,
        facts: { frame: i % 3 === 0 ? 'alloy' : 'iron', weight: { from: 5 + (i % 9), to: 7 + (i % 9) } },
      },
    })),
    serials: {
      schemes: [{ id: 'k', prefix: 'K', digits: 8 }],
      runs: {
        scheme: every(runs, () => 'k'),
        first: every(runs, (i) => number(i * 100)),
        last: every(runs, (i) => number(i * 100 + 99)),
        models: every(runs, (i) => [`model-${i % models}`]),
        year: every(runs, (i) => 1900 + (i % 60)),
      },
    },
  });
}
