import type { Scheme, Serials } from '../../../../src/pack/schema/serials';
import { SerialIndex } from '../../../../src/pack/serial-index';
import type { RunColumns } from '../../../../src/pack/serials/pack-runs';
import type { Run } from '../../../../src/pack/serials/run';
import { tabulate } from '../../../../src/pack/serials/run-table';

export const FIVE_DIGITS: Scheme = { id: 'k', prefix: 'K', digits: 5 };

type Span = readonly [number, number];

/** A pack's runs from plain spans; each run's model tells which span it was. */
export function serialsOf(spans: readonly Span[], scheme = FIVE_DIGITS): Serials {
  return {
    schemes: [scheme],
    runs: {
      scheme: spans.map(() => scheme.id),
      first: spans.map(([first]) => String(first)),
      last: spans.map(([, last]) => String(last)),
      models: spans.map((_, i) => [`m${i}`]),
    },
  };
}

/** Some runs as one pack's columns, without sources. */
export function columnsFrom(serials: Serials, pack = 'p'): RunColumns {
  return { pack, table: tabulate(serials), modelRef: (ref) => `${pack}/${ref}`, citation: () => null };
}

export function columnsOf(spans: readonly Span[], pack = 'p', scheme = FIVE_DIGITS): RunColumns {
  return columnsFrom(serialsOf(spans, scheme), pack);
}

export function indexOf(...spans: Span[]): SerialIndex {
  return new SerialIndex([columnsOf(spans)]);
}

/** All that a run says, which it puts together only when it is asked. */
export function told(run: Run) {
  const { pack, entry, scheme, first, last, firstNumber, lastNumber, models, year, place, source } = run;
  return { pack, entry, scheme, first, last, firstNumber, lastNumber, models, year, place, source };
}
