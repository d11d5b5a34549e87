import type { Likely } from '../audit/types';
import { likelyTexts } from '../text/catalogue/likely';

/**
 * Words for a probability, after the likelihood scale of the IPCC's guidance note on the consistent treatment of
 * uncertainties (2010): virtually certain 99-100 %, very likely 90-100 %, likely 66-100 %, about as likely as not
 * 33-66 %; below that it is told no more than that it is open.
 */
export type Sureness = 'virtually-certain' | 'very-likely' | 'likely' | 'even' | 'open';

export function surenessOf(probability: number): Sureness {
  if (probability >= 0.99) return 'virtually-certain';
  if (probability >= 0.9) return 'very-likely';
  if (probability >= 0.66) return 'likely';
  return probability >= 0.33 ? 'even' : 'open';
}

/** How sure it is, and on what that rests where it is one thing alone. */
export function sureWords({ probability, restsOn }: Pick<Likely, 'probability' | 'restsOn'>): string {
  return (restsOn === 'serial' ? likelyTexts.sureByNumber : likelyTexts.sure)[surenessOf(probability)];
}
