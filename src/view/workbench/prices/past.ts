import type { PastTold } from '../../../audit/price-enquiry';

/** The question what a price of the past comes to, and its answer. */
export interface PastState {
  amount: string;
  date: string;
  problem: 'money' | 'date' | 'future' | null;
  told: PastTold | null;
}

export const NO_PAST: PastState = { amount: '', date: '', problem: null, told: null };

export interface PastActions {
  write(part: { amount?: string; date?: string }): void;
  ask(): void;
}
