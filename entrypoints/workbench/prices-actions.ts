import { putObservations, readObservations, removeObservations } from '../../src/keep/observations';
import type { KeptObservation } from '../../src/keep/schema';
import type { Observation } from '../../src/price/observation';
import { NOTHING_WRITTEN, observationOf, type Writing, type Written } from '../../src/price/observation-fields';
import { decodeTable, guessColumns, MOST_ROWS, type RowRead, readRow, readTable, tableOf } from '../../src/price/table';
import { type ModelNamed, writingOf } from '../../src/price/writing';
import { readMoney } from '../../src/quantity/money';
import { keptPrice, priceOfKept } from '../../src/session/kept-prices';
import { priceRoomTexts } from '../../src/text/catalogue/price-room';
import { priceTexts } from '../../src/text/catalogue/prices';
import type { Bringing, PricesActions, PricesState } from '../../src/view/workbench/prices/state';
import { announce } from '../shared/follow-messages';
import { withKeep } from '../shared/keep';
import { today } from '../shared/today';
import type { BenchEngine } from './bench-engine';

/** Rows checked before the page draws itself again, and how many bad ones are named. */
const AT_ONCE = 2_000;
const MOST_BAD = 20;
const PREVIEWED = 5;
const MOST_BYTES = 50_000_000;

/** What can be done in the room of prices. */
export function pricesActions(
  engine: BenchEngine,
  state: () => PricesState,
  show: (change: Partial<PricesState>) => void,
): {
  actions: PricesActions;
  /** A price of an advert comes in, to be looked over. */
  fillIn: (written: Partial<Written>) => void;
  start: () => Promise<void>;
  packsRead: () => Promise<void>;
  follow: () => Promise<void>;
} {
  let asks = 0;
  let checks = 0;
  let readNow: readonly Observation[] = [];

  const writing = (): Writing => writingOf(state().models ?? [], today());
  const read = (): Extract<Bringing, { table: unknown }> | null => {
    const { bringing } = state();
    return 'table' in bringing ? bringing : null;
  };

  async function lookUp(): Promise<void> {
    const { model: written, grade, asking } = state();
    const model = writing().modelOf(written);
    if (!model) return show({ problem: 'model', answer: null });
    const money = asking.trim() === '' ? null : readMoney(asking);
    if (asking.trim() !== '' && !money?.currency) return show({ problem: 'money', answer: null });
    asks += 1;
    const mine = asks;
    const reply = await engine.ask({
      about: 'price',
      asked: {
        ...{ model, grade: grade || null, finish: 'plain', asOf: today(), rates: [] },
        asking: money?.currency ? { amount: Number(money.amount), currency: money.currency } : null,
        own: (state().kept ?? []).map(priceOfKept),
      },
    });
    if (mine !== asks) return;
    const askedWith = { askedFor: asking.trim(), askedGrade: grade !== '' };
    if (reply.ok) show({ problem: null, answer: reply.value, ...askedWith, trouble: null });
    else show({ trouble: reply.trouble });
  }

  async function reread(): Promise<void> {
    if (state().isPrivate) return;
    const kept = await withKeep(readObservations);
    if (!kept.ok) return show({ trouble: kept.trouble });
    show({ kept: kept.value });
    // Drafts are held against one's own prices too.
    engine.packsChanged();
    if (state().answer) await lookUp();
  }

  /** Keeps prices, all or none. In a private window they are known as long as the page is open. */
  async function put(observations: readonly KeptObservation[]): Promise<boolean> {
    if (state().isPrivate) {
      show({ kept: [...observations, ...(state().kept ?? [])] });
      if (state().answer) await lookUp();
      return true;
    }
    const done = await withKeep((db) => putObservations(db, observations));
    if (!done.ok) {
      show({ trouble: done.trouble });
      return false;
    }
    announce({ type: 'prices-changed' });
    await reread();
    return true;
  }

  const kept = (observation: Observation): KeptObservation =>
    keptPrice(observation, crypto.randomUUID(), new Date().toISOString());

  function previewed(bringing: Extract<Bringing, { table: unknown }>): Bringing {
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
    const { table, columns, rest } = start;
    const told = writing();
    for (let at = 0; at < table.rows.length; at++) {
      const row = readRow(table, at, columns, rest, told);
      if (row.ok) good.push(row.observation);
      else bad.push(row);
      if (at % AT_ONCE !== 0) continue;
      show({ bringing: { ...start, step: 'checking', done: at, bad: [], badCount: 0 } });
      await new Promise((resolve) => setTimeout(resolve));
      if (mine !== checks) return;
    }
    readNow = bad.length === 0 ? good : [];
    const done = { done: table.rows.length, bad: bad.slice(0, MOST_BAD), badCount: bad.length };
    show({ bringing: { ...start, ...done, step: bad.length === 0 ? 'good' : 'bad' } });
  }

  const actions: PricesActions = {
    write: (part) => show({ ...part, problem: null }),
    ask: () => void lookUp(),
    askFor(model) {
      show({ model, grade: '', asking: '' });
      void lookUp();
    },
    fill: (part) => show({ form: { ...state().form, ...part }, saved: false, formProblems: [] }),
    async keep() {
      const found = observationOf(state().form, writing());
      if (!found.ok) return show({ formProblems: found.problems, saved: false });
      if (!(await put([kept(found.observation)]))) return;
      const { model, currency, kind } = state().form;
      // Whoever keeps one often keeps the next one of the same.
      show({ form: { ...NOTHING_WRITTEN, model, currency, kind }, formProblems: [], saved: true });
    },
    async remove(id) {
      const removed = state().kept?.find((one) => one.id === id) ?? null;
      if (state().isPrivate) return show({ removed, kept: state().kept?.filter((one) => one.id !== id) ?? [] });
      const done = await withKeep((db) => removeObservations(db, [id]));
      if (!done.ok) return show({ trouble: done.trouble });
      announce({ type: 'prices-changed' });
      show({ removed });
      await reread();
    },
    async undoRemove() {
      const { removed } = state();
      if (removed && (await put([removed]))) show({ removed: null });
    },
    save() {
      const text = tableOf((state().kept ?? []).map(priceOfKept));
      const link = document.createElement('a');
      link.href = URL.createObjectURL(new Blob([text], { type: 'text/csv' }));
      link.download = priceRoomTexts.kept.file;
      link.click();
      setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
    },
    async choose(file) {
      checks += 1;
      if (file.size > MOST_BYTES) return show({ bringing: { step: 'refused', why: priceRoomTexts.bring.tooLarge } });
      const { text, encoding } = decodeTable(new Uint8Array(await file.arrayBuffer()));
      const found = readTable(text);
      if (!found.ok) return show({ bringing: { step: 'refused', why: priceTexts.table[found.problem] } });
      const { table } = found;
      const none = { preview: [], done: 0, bad: [], badCount: 0 };
      const guessed = { columns: guessColumns(table), guessedEncoding: encoding === 'windows-1252' };
      show({ bringing: previewed({ step: 'columns', table, rest: {}, ...guessed, ...none }) });
    },
    map(change) {
      const before = read();
      if (!before) return;
      checks += 1;
      const [columns, rest] = [
        { ...before.columns, ...change.columns },
        { ...before.rest, ...change.rest },
      ];
      show({ bringing: previewed({ ...before, columns, rest }) });
    },
    check: () => void checkAll(),
    cancel() {
      checks += 1;
      readNow = [];
      show({ bringing: { step: 'none' } });
    },
    async take() {
      const all = readNow;
      if (all.length === 0 || all.length > MOST_ROWS) return;
      readNow = [];
      if (await put(all.map(kept))) show({ bringing: { step: 'done', count: all.length } });
    },
  };

  async function packsRead(): Promise<void> {
    const reply = await engine.ask({ about: 'priceModels' });
    if (!reply.ok) return show({ trouble: reply.trouble });
    const models: ModelNamed[] = reply.value;
    show({ models, trouble: null, form: named(state().form, models) });
    if (state().answer) await lookUp();
  }

  const fillIn = (written: Partial<Written>) => {
    const form = { ...NOTHING_WRITTEN, date: today(), ...written };
    show({ form: named(form, state().models ?? []), saved: false, formProblems: [] });
  };

  return { actions, fillIn, packsRead, follow: reread, start: reread };
}

/** A model that an advert names by its ref is shown by its label. */
function named(form: Written, models: readonly ModelNamed[]): Written {
  const model = models.find(({ ref }) => ref === form.model);
  return model ? { ...form, model: model.label } : form;
}
