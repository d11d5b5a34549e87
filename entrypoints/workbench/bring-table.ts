import type { Watch } from '../../src/keep/observations';
import type { Observation } from '../../src/price/observation';
import type { Writing } from '../../src/price/observation-fields';
import { decodeTable, guessColumns, MOST_ROWS, type RowRead, readRow, readTable } from '../../src/price/table';
import { priceFieldTexts } from '../../src/text/catalogue/price-fields';
import { priceRoomTexts } from '../../src/text/catalogue/price-room';
import type { BringActions, Bringing } from '../../src/view/workbench/prices/bringing';

/** Rows checked before the page draws itself again, and how many bad ones are named. */
const AT_ONCE = 2_000;
const MOST_BAD = 20;
const PREVIEWED = 5;
const MOST_BYTES = 50_000_000;

type Read = Extract<Bringing, { table: unknown }>;

/** What the room of prices lends for bringing a table. */
export interface BringRoom {
  state: () => Bringing;
  show: (bringing: Bringing) => void;
  /** What is to be known for reading a row, as of now. */
  writing: () => Writing;
  /** Keeps all of them or none; answers whether they were kept. */
  keepAll: (observations: readonly Observation[], watch: Watch) => Promise<boolean>;
}

/** A table of prices, from the file to what is kept: all of its rows or none. Fetched with the first file. */
export function bringTable({ state, show, writing, keepAll }: BringRoom): BringActions {
  let checks = 0;
  let readNow: readonly Observation[] = [];

  const read = (): Read | null => {
    const bringing = state();
    return 'table' in bringing ? bringing : null;
  };

  function previewed(bringing: Read): Bringing {
    const told = writing();
    const { table, columns, rest } = bringing;
    const preview = table.rows.slice(0, PREVIEWED).map((_, at) => readRow(table, at, columns, rest, told));
    return { ...bringing, step: 'columns', preview, done: 0, bad: [], badCount: 0 };
  }

  /** Slice by slice, so that the page stays alive and the work can be cancelled. */
  async function checkAll(): Promise<void> {
    const start = read();
    if (!start) return;
    checks += 1;
    const mine = checks;
    const [good, bad]: [Observation[], Extract<RowRead, { ok: false }>[]] = [[], []];
    let badCount = 0;
    const { table, columns, rest } = start;
    const told = writing();
    for (let at = 0; at < table.rows.length; at++) {
      const row = readRow(table, at, columns, rest, told);
      if (row.ok) good.push(row.observation);
      else {
        badCount += 1;
        if (bad.length < MOST_BAD) bad.push(row);
      }
      if (at % AT_ONCE !== 0) continue;
      show({ ...start, step: 'checking', done: at, bad: [], badCount: 0 });
      await new Promise((resolve) => setTimeout(resolve));
      if (mine !== checks) return;
    }
    readNow = badCount === 0 ? good : [];
    show({ ...start, done: table.rows.length, bad, badCount, step: badCount === 0 ? 'good' : 'bad' });
  }

  return {
    async choose(file) {
      checks += 1;
      readNow = [];
      if (file.size > MOST_BYTES) return show({ step: 'refused', why: priceRoomTexts.bring.tooLarge });
      const { text, encoding } = decodeTable(new Uint8Array(await file.arrayBuffer()));
      const found = readTable(text);
      if (!found.ok) return show({ step: 'refused', why: priceFieldTexts.table[found.problem] });
      const { table } = found;
      const none = { preview: [], done: 0, bad: [], badCount: 0 };
      const guessed = { columns: guessColumns(table), guessedEncoding: encoding === 'windows-1252' };
      show(previewed({ step: 'columns', table, rest: {}, ...guessed, ...none }));
    },
    map(change) {
      const before = read();
      if (!before) return;
      checks += 1;
      const [columns, rest] = [
        { ...before.columns, ...change.columns },
        { ...before.rest, ...change.rest },
      ];
      show(previewed({ ...before, columns, rest }));
    },
    check: () => void checkAll(),
    cancel() {
      checks += 1;
      readNow = [];
      show({ step: 'none' });
    },
    async take() {
      const [all, before] = [readNow, read()];
      if (!before || all.length === 0 || all.length > MOST_ROWS) return;
      readNow = [];
      checks += 1;
      const mine = checks;
      const cancelled = () => mine !== checks;
      const progress = (done: number) => cancelled() || show({ ...before, step: 'keeping', done });
      progress(0);
      const done = await keepAll(all, { progress, cancelled });
      if (done) return show({ step: 'done', count: all.length });
      if (cancelled()) return;
      // Nothing is lost: what was read waits to be kept again.
      readNow = all;
      show({ ...before, step: 'good' });
    },
  };
}
