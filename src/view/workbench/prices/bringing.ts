import type { Written } from '../../../price/observation-fields';
import type { Columns, PriceTable, RowRead } from '../../../price/table';

/** A table that is being brought in: chosen, checked row by row, then kept whole or not at all. */
export type Bringing =
  | { step: 'none' }
  | { step: 'refused'; why: string }
  | {
      step: 'columns' | 'checking' | 'bad' | 'good' | 'keeping';
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

export interface BringActions {
  choose(file: File): void;
  map(change: { columns?: Partial<Columns>; rest?: Partial<Written> }): void;
  check(): void;
  cancel(): void;
  take(): void;
}
