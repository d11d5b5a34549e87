import type { Scheme } from '../schema/serials';
import type { PackRuns, RunsOfScheme } from './pack-runs';
import { ODD, printedAs } from './printed';

/**
 * One allotted run. Only its numbers are read at once: of the many that are looked up for each number in an advert, few
 * are ever shown. So everything else is no field of it: whoever copies one, or compares two, has to name what he wants.
 */
export class Run {
  readonly scheme: Scheme;
  readonly firstNumber: number;
  readonly lastNumber: number;
  readonly #of: PackRuns;
  readonly #among: RunsOfScheme;
  readonly #at: number;

  /** @param at its place in the columns */
  constructor(of: PackRuns, among: RunsOfScheme, at: number) {
    const { firsts, widths } = among.table;
    this.scheme = among.scheme;
    this.firstNumber = firsts.at(at);
    this.lastNumber = this.firstNumber + widths.at(at);
    this.#of = of;
    this.#among = among;
    this.#at = at;
  }

  get pack(): string {
    return this.#of.pack;
  }

  /** Entry id: the scheme's id and the first number. */
  get entry(): string {
    return `${this.scheme.id}-${this.first.toLowerCase().replace(/[^a-z0-9]/g, '')}`;
  }

  /** As printed in the table. */
  get first(): string {
    return this.#printed(this.#among.table.printed.at(this.#at) & 15, this.firstNumber, 2 * this.#at);
  }

  /** As printed in the table. */
  get last(): string {
    return this.#printed(this.#among.table.printed.at(this.#at) >> 4, this.lastNumber, 2 * this.#at + 1);
  }

  /** packId/modelId, several where the block was shared. */
  get models(): string[] {
    return this.#of.modelsIn(this.#among.table.models.at(this.#at));
  }

  get year(): number | null {
    return this.#among.table.years.at(this.#at) || null;
  }

  get place(): string | null {
    return this.#of.table.words.places[this.#among.table.places.at(this.#at)] ?? null;
  }

  get source(): string | null {
    return this.#of.citation(this.#of.table.words.sources[this.#among.table.sources.at(this.#at)]);
  }

  #printed(form: number, number: number, at: number): string {
    return form === ODD ? this.#among.table.odd[at]! : printedAs(form, this.scheme, number);
  }
}

/** Of two that are as narrow as each other the one that begins first. */
export function narrowestFirst(a: Run, b: Run): number {
  return a.lastNumber - a.firstNumber - (b.lastNumber - b.firstNumber) || a.firstNumber - b.firstNumber;
}
