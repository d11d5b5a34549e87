import type { PriceAnswer, PriceAsked } from '../../../audit/price-enquiry';
import type { KeptObservation } from '../../../keep/schema';
import type { FieldProblem, Written } from '../../../price/observation-fields';
import type { ModelNamed } from '../../../price/writing';
import type { BenchTrouble } from '../trouble';
import type { BringActions, Bringing } from './bringing';
import type { PastActions, PastState } from './past';
import type { RatesActions, RatesState } from './rates';

export interface PricesState {
  models: readonly ModelNamed[] | null;
  /** The question as it is written. */
  model: string;
  grade: string;
  finish: PriceAsked['finish'];
  /** Whether wild prices are held down. */
  robust: boolean;
  asking: string;
  problem: 'model' | 'money' | 'amount' | null;
  answer: PriceAnswer | null;
  /** An answer is on its way. */
  looking: boolean;
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
  rates: RatesState;
  past: PastState;
  trouble: BenchTrouble | null;
  isPrivate: boolean;
}

export interface PricesActions extends BringActions {
  write(part: Partial<Pick<PricesState, 'model' | 'grade' | 'finish' | 'asking'>>): void;
  ask(): void;
  hold(robust: boolean): void;
  /** Puts the currencies of a rate that is missing into the form for one. */
  wantRate(): void;
  askFor(model: string): void;
  fill(part: Partial<Written>): void;
  keep(): void;
  remove(id: string): void;
  undoRemove(): void;
  save(): void;
  rates: RatesActions;
  past: PastActions;
}
