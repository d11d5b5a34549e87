import type { KeptRate } from '../../../keep/schema';
import { NO_RATE_WRITTEN, type RateProblem, type WrittenRate } from '../../../price/written-rate';

/** Exchange rates of the user's own, and the form for one more. */
export interface RatesState {
  /** null until they have been read. */
  kept: readonly KeptRate[] | null;
  form: WrittenRate;
  problems: readonly RateProblem[];
  saved: boolean;
  /** The one that was removed last and can be put back. */
  removed: KeptRate | null;
}

export const NO_RATES: RatesState = { kept: null, form: NO_RATE_WRITTEN, problems: [], saved: false, removed: null };

export interface RatesActions {
  fill(part: Partial<WrittenRate>): void;
  keep(): void;
  remove(id: string): void;
  undoRemove(): void;
}
