import { putObservations, readObservations, removeObservations, type Watch } from '../../src/keep/observations';
import type { KeptObservation } from '../../src/keep/schema';
import type { Observation } from '../../src/price/observation';
import { NOTHING_WRITTEN, observationOf, type Writing, type Written } from '../../src/price/observation-fields';
import { type ModelNamed, writingOf } from '../../src/price/writing';
import { writtenPrice } from '../../src/price/written-price';
import { keptPrice, priceOfKept } from '../../src/session/kept-prices';
import { rateOfKept } from '../../src/session/kept-rates';
import { priceRoomTexts } from '../../src/text/catalogue/price-room';
import type { BringActions } from '../../src/view/workbench/prices/bringing';
import type { PricesActions, PricesState } from '../../src/view/workbench/prices/state';
import { announce } from '../shared/follow-messages';
import { withKeep } from '../shared/keep';
import { today } from '../shared/today';
import type { BenchEngine } from './bench-engine';
import { pastActions } from './past-actions';
import { ratesActions } from './rates-actions';

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

  const writing = (): Writing => writingOf(state().models ?? [], today());
  async function lookUp(): Promise<void> {
    const { model: written, grade, finish, robust, asking } = state();
    const model = writing().modelOf(written);
    if (!model) return show({ problem: 'model', answer: null });
    const money = asking.trim() === '' ? null : writtenPrice(asking);
    if (money && !money.ok) return show({ problem: money.wrong === 'amount' ? 'amount' : 'money', answer: null });
    asks += 1;
    const mine = asks;
    show({ looking: true });
    const reply = await engine.ask({
      about: 'price',
      asked: {
        ...{ model, grade: grade || null, finish, robust, asOf: today() },
        rates: state().isPrivate ? (state().rates.kept ?? []).map(rateOfKept) : null,
        asking: money && { amount: money.amount, currency: money.currency },
        // What is kept the engine reads itself; in a private window nothing is.
        own: state().isPrivate ? (state().kept ?? []).map(priceOfKept) : null,
      },
    });
    if (mine !== asks) return;
    const askedWith = { looking: false, askedFor: asking.trim(), askedGrade: grade !== '' };
    if (reply.ok) show({ problem: null, answer: reply.value, ...askedWith, trouble: null });
    else show({ looking: false, trouble: reply.trouble });
  }

  async function reread(): Promise<void> {
    if (state().isPrivate) return;
    const kept = await withKeep(readObservations);
    if (!kept.ok) return show({ trouble: kept.trouble });
    show({ kept: kept.value });
    await rates.reread();
    // Drafts are held against one's own prices too.
    engine.packsChanged();
    if (state().answer) await lookUp();
  }

  /** Keeps prices, all or none. In a private window they are known as long as the page is open. */
  async function put(observations: readonly KeptObservation[], watch?: Watch): Promise<boolean> {
    if (state().isPrivate) {
      show({ kept: [...observations, ...(state().kept ?? [])] });
      if (state().answer) await lookUp();
      return true;
    }
    const done = await withKeep((db) => putObservations(db, observations, watch));
    if (!done.ok) {
      if (!watch?.cancelled()) show({ trouble: done.trouble });
      return false;
    }
    announce({ type: 'prices-changed' });
    await reread();
    return true;
  }

  const kept = (observation: Observation): KeptObservation =>
    keptPrice(observation, crypto.randomUUID(), new Date().toISOString());

  const rates = ratesActions({
    isPrivate: state().isPrivate,
    ...{ state: () => state().rates, show: (change) => show({ rates: { ...state().rates, ...change } }) },
    trouble: (trouble) => show({ trouble }),
    async changed() {
      if (!state().isPrivate) announce({ type: 'prices-changed' });
      engine.packsChanged();
      if (state().answer) await lookUp();
    },
  });

  /** What reads tables is fetched with the first file: most visitors bring none. */
  let fetched: Promise<BringActions> | undefined;
  const bringing = () => {
    fetched ??= import('./bring-table').then(({ bringTable }) =>
      bringTable({
        ...{ state: () => state().bringing, show: (bringing) => show({ bringing }), writing },
        keepAll: (all, watch) => put(all.map(kept), watch),
      }),
    );
    return fetched;
  };
  const bring: BringActions = {
    choose: async (file) => (await bringing()).choose(file),
    map: async (change) => (await bringing()).map(change),
    check: async () => (await bringing()).check(),
    cancel: async () => (await bringing()).cancel(),
    take: async () => (await bringing()).take(),
  };

  const actions: PricesActions = {
    write: (part) => show({ ...part, problem: null }),
    ask: () => void lookUp(),
    hold(robust) {
      show({ robust });
      void lookUp();
    },
    wantRate() {
      const { askedFor, answer } = state();
      const asked = writtenPrice(askedFor);
      const from = asked.ok ? asked.currency : '';
      rates.actions.fill({ from, to: answer?.band?.currency ?? '', date: today() });
    },
    askFor(model) {
      show({ model, grade: '', finish: 'plain', asking: '' });
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
    async save() {
      const { tableOf } = await import('../../src/price/table');
      const text = tableOf((state().kept ?? []).map(priceOfKept));
      const link = document.createElement('a');
      link.href = URL.createObjectURL(new Blob([text], { type: 'text/csv' }));
      link.download = priceRoomTexts.kept.file;
      link.click();
      setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
    },
    ...bring,
    rates: rates.actions,
    past: pastActions({
      engine,
      ...{ state: () => state().past, show: (change) => show({ past: { ...state().past, ...change } }) },
      trouble: (trouble) => show({ trouble }),
    }),
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
