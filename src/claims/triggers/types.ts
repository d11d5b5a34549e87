/**
 * What a trigger does to the phrases in its reach, after Chapman et al. 2001 (negation) and Harkema et al. 2009
 * (subject): a trigger stands before or after what it governs, reaches so many words inside the clause, and is stopped
 * by a termination word. "none" triggers look like triggers and are not ("not only").
 */
export type TriggerEffect = 'denies' | 'likens' | 'guesses' | 'quotes' | 'other' | 'stop' | 'none';

export interface Trigger {
  effect: TriggerEffect;
  /** Stands before or after what it governs, or is the answer in a row ("Zigzag: no"). */
  side: 'before' | 'after' | 'both' | 'row';
  /** How many words it reaches; 99 for the rest of the clause. */
  reach: number;
  /** sentence: reaches on through the later clauses of its sentence ("also for sale: …"). */
  across?: boolean;
  /** Governs only where it ends its clause ("free arm it isn't"). */
  ends?: boolean;
  /** Governs only names ("fits an X"), not features. */
  namesOnly?: boolean;
}

export type TriggerRow = readonly [phrases: string, trigger: Trigger];
