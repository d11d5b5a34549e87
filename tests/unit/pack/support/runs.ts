import type { Scheme } from '../../../../src/pack/schema/serials';
import { type RunColumns, SerialIndex } from '../../../../src/pack/serial-index';

export const FIVE_DIGITS: Scheme = { id: 'k', prefix: 'K', digits: 5 };

/** One pack's columns from plain spans; each run's model tells which span it was. */
export function columnsOf(spans: readonly (readonly [number, number])[], pack = 'p', scheme = FIVE_DIGITS): RunColumns {
  return {
    pack,
    serials: {
      schemes: [scheme],
      runs: {
        scheme: spans.map(() => scheme.id),
        first: spans.map(([first]) => String(first)),
        last: spans.map(([, last]) => String(last)),
        models: spans.map((_, i) => [`m${i}`]),
      },
    },
    modelRef: (ref) => `${pack}/${ref}`,
    citation: () => null,
  };
}

export function indexOf(...spans: (readonly [number, number])[]): SerialIndex {
  return new SerialIndex([columnsOf(spans)]);
}
