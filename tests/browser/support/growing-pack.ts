import type { Pack } from '../../../src/pack/schema/index';

/** A pack of so many runs that reading, checking and keeping it takes a while. */
export function growingPack(id: string, edition: number, runs: number): Pack {
  const numbers = (from: number) => Array.from({ length: runs }, (_, i) => String(from + i * 10).padStart(8, '0'));
  return {
    schema: 1,
    about: {
      ...{ id, title: 'A growing table', edition, licence: 'CC0-1.0', language: 'en', demo: true },
      covers: { thing: 'sewing machine', words: ['sewing machine'] },
    },
    models: [{ id: 'plain', label: 'Plain one', names: ['Plain Onemodel'], number: 1000 }],
    serials: {
      schemes: [{ id: 'n', prefix: 'N', digits: 8 }],
      runs: {
        scheme: Array(runs).fill('n'),
        ...{ first: numbers(1), last: numbers(10), models: Array(runs).fill(['plain']) },
      },
    },
  };
}
