import { dateOf } from '../../src/price/written-date';
import { writtenPrice } from '../../src/price/written-price';
import type { PastActions, PastState } from '../../src/view/workbench/prices/past';
import type { BenchTrouble } from '../../src/view/workbench/trouble';
import { today } from '../shared/today';
import type { BenchEngine } from './bench-engine';

interface PastRoom {
  engine: BenchEngine;
  state: () => PastState;
  show: (change: Partial<PastState>) => void;
  trouble: (trouble: BenchTrouble) => void;
}

/** What a price of the past comes to today. */
export function pastActions({ engine, state, show, trouble }: PastRoom): PastActions {
  let asks = 0;
  return {
    write: (part) => show({ ...part, problem: null }),
    async ask() {
      const { amount: written, date: day } = state();
      const price = writtenPrice(written);
      if (!price.ok) return show({ problem: 'money', told: null });
      const date = dateOf(day.trim());
      if (!date) return show({ problem: 'date', told: null });
      if (date > today()) return show({ problem: 'future', told: null });
      asks += 1;
      const mine = asks;
      const reply = await engine.ask({
        about: 'past',
        price: { amount: price.amount, currency: price.currency, date },
        asOf: today(),
      });
      if (mine !== asks) return;
      if (reply.ok) show({ problem: null, told: reply.value });
      else trouble(reply.trouble);
    },
  };
}
