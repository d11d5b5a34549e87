import type { Knowledge } from '../pack/knowledge';
import type { Observation } from '../price/observation';
import { decodeTable, guessColumns, readRow, readTable } from '../price/table';
import { modelsNamed, writingOf } from '../price/writing';
import { priceCliTexts as texts } from '../text/catalogue/price-cli';
import { priceFieldTexts } from '../text/catalogue/price-fields';
import { BadInput } from './bad-input';
import { readBytes } from './input-file';

/** So many rows that are no good are named at once. */
const MOST_NAMED = 5;

/** The prices of a table, all of them. @throws BadInput where the file or any row is no good: nothing is taken by half. */
export function loadObservations(file: string, today: string, knowledge: Knowledge): Observation[] {
  const read = readTable(decodeTable(readBytes(file)).text);
  if (!read.ok) throw new BadInput(texts.badTable(file, priceFieldTexts.table[read.problem]));
  const columns = guessColumns(read.table);
  const writing = writingOf(modelsNamed(knowledge), today);
  const rows = read.table.rows.map((_, at) => readRow(read.table, at, columns, {}, writing));
  const bad = rows.flatMap((row) =>
    row.ok
      ? []
      : [texts.badRow(row.row, row.problems.map(({ field, wrong }) => priceFieldTexts.wrong(field, wrong)).join(', '))],
  );
  if (bad.length > 0) throw new BadInput(texts.badRows(file, bad.length, bad.slice(0, MOST_NAMED).join('; ')));
  return rows.flatMap((row) => (row.ok ? [row.observation] : []));
}
