import Papa from 'papaparse';
import type { Observation } from './observation';
import {
  type FieldProblem,
  NOTHING_WRITTEN,
  OBSERVATION_FIELDS,
  type ObservationField,
  observationOf,
  type Writing,
  type Written,
  writtenOf,
} from './observation-fields';

/** A table as it was read: its headings and its rows. */
export interface PriceTable {
  headings: string[];
  rows: string[][];
}

/** Which column holds which field, by its place; null where none does. */
export type Columns = Record<ObservationField, number | null>;

/** More rows are no handful of observations; beyond, the table is refused. */
export const MOST_ROWS = 200_000;

export type TableProblem = 'empty' | 'too-long' | 'not-text';

/** A text of comma, semicolon or tab separated values, whichever it is (RFC 4180 and its dialects, read by papaparse). */
export function readTable(text: string): { ok: true; table: PriceTable } | { ok: false; problem: TableProblem } {
  if (text.includes('\u0000')) return { ok: false, problem: 'not-text' };
  const { data } = Papa.parse<string[]>(text.replace(/^\uFEFF/, ''), { skipEmptyLines: 'greedy' });
  const [headings, ...rows] = data;
  if (!headings || rows.length === 0) return { ok: false, problem: 'empty' };
  if (rows.length > MOST_ROWS) return { ok: false, problem: 'too-long' };
  return { ok: true, table: { headings: headings.map((heading) => heading.trim()), rows } };
}

/** The text of a file: UTF-8, or UTF-16 by its mark; where it is neither, Windows-1252, which is said. */
export function decodeTable(bytes: Uint8Array): { text: string; encoding: 'utf-8' | 'utf-16' | 'windows-1252' } {
  const [first, second] = bytes;
  if ((first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff)) {
    const label = first === 0xff ? 'utf-16le' : 'utf-16be';
    return { text: new TextDecoder(label).decode(bytes), encoding: 'utf-16' };
  }
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes), encoding: 'utf-8' };
  } catch {
    return { text: new TextDecoder('windows-1252').decode(bytes), encoding: 'windows-1252' };
  }
}

/** Headings by which people call a field, in three languages. */
const CALLED: Record<ObservationField, RegExp> = {
  model: /^(model|machine|type|modell|maschine|modèle|machine à coudre)$/i,
  kind: /^(kind|asked or paid|asked\/paid|art|nature)$/i,
  amount: /^(amount|price|preis|betrag|prix|montant)$/i,
  currency: /^(currency|währung|devise|monnaie)$/i,
  date: /^(date|seen|day|when|datum|gesehen)$/i,
  grade: /^(grade|condition|zustand|état)$/i,
  complete: /^(complete|completeness|vollständig|complet|complète)$/i,
  finish: /^(finish|lack|finition)$/i,
  place: /^(place|where|location|town|ort|lieu|ville)$/i,
  seller: /^(seller|sold by|verkäufer|vendeur)$/i,
  link: /^(link|url|address|adresse)$/i,
  note: /^(note|notes|remarks|comment|bemerkung|notiz|remarque)$/i,
};

/** Which column holds what, by its heading. */
export function guessColumns({ headings }: PriceTable): Columns {
  const columns = OBSERVATION_FIELDS.map((field) => {
    const at = headings.findIndex((heading) => CALLED[field].test(heading));
    return [field, at < 0 ? null : at];
  });
  return Object.fromEntries(columns) as Columns;
}

/** One row with what it comes to. Its number counts as a spreadsheet does: the headings are row 1. */
export type RowRead =
  | { row: number; ok: true; observation: Observation }
  | { row: number; ok: false; problems: FieldProblem[] };

/** @param rest what holds for every row that says nothing of it: "all of these in GBP" */
export function readRow(
  table: PriceTable,
  at: number,
  columns: Columns,
  rest: Partial<Written>,
  writing: Writing,
): RowRead {
  const cells = table.rows[at]!;
  const written = { ...NOTHING_WRITTEN, ...rest };
  for (const field of OBSERVATION_FIELDS) {
    const column = columns[field];
    const cell = column === null ? '' : plain(cells[column] ?? '');
    if (cell !== '') written[field] = cell;
  }
  return { row: at + 2, ...observationOf(written, writing) };
}

/** A cell that our own export has made harmless, as it was before. */
function plain(cell: string): string {
  return cell.trim().replace(/^'(?=[=+\-@\t\r])/, '');
}

/**
 * Observations as a table. A cell that a spreadsheet would take for a formula gets an apostrophe before it, as the Open
 * Worldwide Application Security Project advises ("CSV Injection").
 */
export function tableOf(observations: readonly Observation[]): string {
  const rows = observations.map((seen) => OBSERVATION_FIELDS.map((field) => writtenOf(seen)[field]));
  return `${Papa.unparse({ fields: [...OBSERVATION_FIELDS], data: rows }, { escapeFormulae: true })}\r\n`;
}
