import type { PriceAnswer } from '../../../audit/price-enquiry';
import type { KeptObservation } from '../../../keep/schema';
import type { FieldProblem, Written } from '../../../price/observation-fields';
import type { Columns, PriceTable, RowRead } from '../../../price/table';
import type { ModelNamed } from '../../../price/writing';
import type { BenchTrouble } from '../trouble';

/** A table that is being brought in: chosen, checked row by row, then kept whole or not at all. */
export type Bringing =
  | { step: 'none' }
  | { step: 'refused'; why: string }
  | {
      step: 'columns' | 'checking' | 'bad' | 'good';
      table: PriceTable;
      columns: Columns;
      /** What holds for rows that say nothing of it. */
      rest: Partial<Written>;
      guessedEncoding: boolean;
      preview: readonly RowRead[];
      /** Rows checked so far, and those that are no good: the first of them, and how many. */
      done: number;
      bad: readonly Extract<RowRead, { ok: false }>[];
      badCount: number;
    }
  | { step: 'done'; count: number };

export interface PricesState {
  models: readonly ModelNamed[] | null;
  /** The question as it is written. */
  model: string;
  grade: string;
  asking: string;
  problem: 'model' | 'money' | null;
  answer: PriceAnswer | null;
  /** The asking price of that answer, as it was written. */
  askedFor: string;
  /** Whether a condition was named for that answer. */
  askedGrade: boolean;
  kept: readonly KeptObservation[] | null;
  form: Written;
  formProblems: readonly FieldProblem[];
  saved: boolean;
  removed: KeptObservation | null;
  bringing: Bringing;
  trouble: BenchTrouble | null;
  isPrivate: boolean;
}

export interface PricesActions {
  write(part: { model?: string; grade?: string; asking?: string }): void;
  ask(): void;
  askFor(model: string): void;
  fill(part: Partial<Written>): void;
  keep(): void;
  remove(id: string): void;
  undoRemove(): void;
  save(): void;
  choose(file: File): void;
  map(change: { columns?: Partial<Columns>; rest?: Partial<Written> }): void;
  check(): void;
  cancel(): void;
  take(): void;
}
