import type { Scheme } from './schema/serials';
import { numberIn } from './serial-form';
import { PackRuns, type RunColumns } from './serials/pack-runs';
import { narrowestFirst, type Run } from './serials/run';

/** Which allotted runs hold a number? Only numbers are kept of each; a Run is put together when it is asked for. */
export class SerialIndex {
  readonly #packs: PackRuns[];
  readonly schemes: readonly { pack: string; scheme: Scheme }[];

  constructor(columns: readonly RunColumns[]) {
    this.#packs = columns.map((column) => new PackRuns(column));
    this.schemes = this.#packs.flatMap(({ pack, schemes }) => schemes.map((scheme) => ({ scheme, pack })));
  }

  /** Schemes of whose form the number is, whether or not a run holds it. */
  schemesOf(normal: string): { pack: string; scheme: Scheme; number: number }[] {
    const out: { pack: string; scheme: Scheme; number: number }[] = [];
    for (const { pack, scheme } of this.schemes) {
      const number = numberIn(scheme, normal);
      if (number !== null) out.push({ pack, scheme, number });
    }
    return out;
  }

  /**
   * The runs that hold the number (normalised: capitals and digits), the narrowest first; 64 of each pack at most, so
   * that no pack can push out what another says.
   */
  find(normal: string): Run[] {
    if (this.#packs.length === 1) return this.#packs[0]!.find(normal);
    return this.#packs.flatMap((pack) => pack.find(normal)).sort(narrowestFirst);
  }

  /** The runs of one scheme that begin next to a number, in order: so many at or before it, so many after it. */
  around(pack: string, scheme: string, number: number, each: number): Run[] {
    return this.#packs.find((one) => one.pack === pack)?.around(scheme, number, each) ?? [];
  }
}
