import type { Knowledge } from '../pack/knowledge';
import type { LocalText } from '../pack/schema/parts';
import type { Points } from './series';

/** A series of a pack, with where it is from and how far it goes. */
export interface SeriesKnown {
  points: Points;
  pack: string;
  /** Its label in the pack's words, and its source as a citation. */
  label: LocalText;
  source: string | null;
  last: string;
}

/**
 * The price index or the weekly wages in a currency: of the pack that is asked first, else of any other; of several the
 * one that goes on the longest.
 */
export function seriesOf(
  which: 'index' | 'wages',
  currency: string,
  pack: string | null,
  knowledge: Knowledge,
): SeriesKnown | null {
  const all = knowledge.packs.flatMap((one) =>
    one[which]
      .filter((series) => series.currency === currency)
      .map((series) => ({
        ...{ points: series.points, pack: one.id, label: series.label, last: series.points.at(-1)![0] },
        source: (series.source && one.citations.get(series.source)) ?? null,
      })),
  );
  all.sort((a, b) => Number(b.pack === pack) - Number(a.pack === pack) || b.last.localeCompare(a.last));
  return all[0] ?? null;
}
