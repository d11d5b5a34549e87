import type { JsonObject } from './json';

/*
 * Serial runs stand in columns; people change rows. A row is one run as an entry: what is null or in a column that isn't
 * there is left out of it.
 */

type Columns = { readonly [column: string]: unknown };

const NEEDED = ['scheme', 'first', 'last', 'models'] as const;
export const OPTIONAL_COLUMNS = ['year', 'date', 'place', 'source'] as const;
const ALL = [...NEEDED, ...OPTIONAL_COLUMNS];

export const isColumn = (key: string): boolean => (ALL as readonly string[]).includes(key);

export function rowsOf(runs: Columns | undefined): JsonObject[] {
  const columns = ALL.flatMap((name) => {
    const values = runs?.[name];
    return Array.isArray(values) ? [{ name, values: values as unknown[] }] : [];
  });
  const length = columns[0]?.name === 'scheme' ? columns[0].values.length : 0;
  const rows: JsonObject[] = new Array(length);
  for (let i = 0; i < length; i++) {
    const row: Record<string, unknown> = {};
    for (const { name, values } of columns) {
      const value = values[i];
      if (value !== null && value !== undefined) row[name] = value;
    }
    rows[i] = row as JsonObject;
  }
  return rows;
}

/** The columns of these rows: those that are needed, those that are asked for, and those in which some row has a value. */
export function columnsOf(rows: readonly JsonObject[], asked: ReadonlySet<string>): Record<string, unknown[]> {
  const columns: Record<string, unknown[]> = {};
  for (const name of NEEDED) columns[name] = rows.map((row) => row[name] ?? null);
  for (const name of OPTIONAL_COLUMNS)
    if (asked.has(name) || rows.some((row) => row[name] !== undefined))
      columns[name] = rows.map((row) => row[name] ?? null);
  return columns;
}
