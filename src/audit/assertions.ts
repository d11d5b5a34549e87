import type { Stanced } from '../claims/types';
import { allowedBy } from '../pack/compile/facts';
import type { Allowed, AttributeKnown } from '../pack/knowledge';
import { attributeOf } from './attribute-of';
import type { AuditCase } from './case';

/** One thing that the advert asserts or denies of a feature, with every place where it does. */
export interface Assertion {
  key: string;
  attribute: AttributeKnown;
  allowed: Allowed;
  denied: boolean;
  guessed: boolean;
  /** A word used loosely disproves nothing. */
  loose: boolean;
  /** Told only in passing, wherever it is said: that disproves nothing either. */
  aside: boolean;
  said: Stanced[];
}

/** Features that the advert asserts, denies or guesses of this thing; the same words said twice are one assertion. */
export function assertions({ reading, knowledge }: AuditCase): Assertion[] {
  const byKey = new Map<string, Assertion>();
  const add = (claim: Stanced, attribute: AttributeKnown, allowed: Allowed, loose: boolean): void => {
    if (claim.subject !== 'this' || claim.stance === 'likens' || claim.stance === 'quotes') return;
    const denied = claim.stance === 'denies';
    const guessed = claim.stance === 'guesses' || isLost(claim, allowed);
    const key = [attribute.ref, keyOf(allowed), denied, guessed, loose].join(' ');
    const there = byKey.get(key);
    const aside = claim.aside ?? false;
    if (there) {
      there.said.push(claim);
      there.aside &&= aside;
    } else byKey.set(key, { key, attribute, allowed, denied, guessed, loose, aside, said: [claim] });
  };
  for (const claim of reading.values) {
    const allowed: Allowed =
      typeof claim.value === 'boolean'
        ? { kind: 'yes-no', value: claim.value }
        : { kind: 'values', values: new Set([claim.value]) };
    add(claim, claim.attribute, allowed, false);
  }
  for (const claim of reading.wordings) {
    const means = claim.entry.means;
    if (!means || !('is' in means)) continue;
    const attribute = attributeOf(means.attribute, claim.pack, knowledge);
    const allowed = attribute && allowedBy(means.is, attribute);
    if (attribute && allowed) add(claim, attribute, allowed, claim.entry.use === 'loose');
  }
  return [...byKey.values()];
}

/** "Knee bar is missing": what is no longer there was there, and belongs to it. */
function isLost({ stance, trigger }: Stanced, allowed: Allowed): boolean {
  return stance === 'denies' && allowed.kind === 'yes-no' && allowed.value && LOST.test(trigger ?? '');
}

const LOST = /\b(?:missing|gone|lost|broken off|fehlt|fehlen|abgebrochen|verloren|manque|manquant|perdue?)\b/i;

function keyOf(allowed: Allowed): string {
  if (allowed.kind === 'values') return [...allowed.values].sort().join('|');
  return allowed.kind === 'yes-no' ? String(allowed.value) : `${allowed.from}-${allowed.to}`;
}
