import type { Facts, FactValue, When } from './schema/models';

/** A fact as written out in full. */
export interface FactEntry {
  is: FactValue;
  when?: When | undefined;
  holds?: 'always' | 'usually' | undefined;
  source?: string | undefined;
}

/** A fact may be a bare value, a set of values, a value with its limits, or several of those: always as a list. */
export function factList(fact: Facts[string]): FactEntry[] {
  if (Array.isArray(fact)) {
    const whole = fact.filter((one): one is Exclude<typeof one, string> => typeof one === 'object');
    return whole.length > 0 ? whole : [{ is: fact as string[] }];
  }
  if (typeof fact === 'object' && 'is' in fact) return [fact as FactEntry];
  return [{ is: fact as FactValue }];
}
