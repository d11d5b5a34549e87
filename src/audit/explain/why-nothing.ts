import type { Stanced } from '../../claims/types';
import { allowedBy } from '../../pack/compile/facts';
import type { Allowed, AttributeKnown } from '../../pack/knowledge';
import { attributeOf } from '../attribute-of';
import { type AuditCase, heldAgainst } from '../case';
import { conditionsOf, hold } from '../claims-held';
import { factsInForce } from '../conditions';
import type { Claim } from './claims';
import type { Reason } from './types';

/** Kinds of adverts of which claims are held against facts, and what is looked at in each. */
const LOOKED_AT: Partial<Record<AuditCase['reading']['kind'], ReadonlySet<Claim['what']>>> = {
  part: new Set<Claim['what']>(['name', 'value', 'fit', 'caution']),
  lot: new Set<Claim['what']>(['caution']),
};

/** Why no finding rests on a claim; for names, serials, grades and factors what they are good for besides. */
export function whyNothing(one: Claim, auditCase: AuditCase): Reason {
  const { kind } = auditCase.reading;
  if (one.what === 'name') return aName(one, auditCase);
  const byStance = 'stance' in one.claim ? notHeld(one.claim, one.what) : null;
  if (byStance) return byStance;
  if (one.what === 'grade') return 'grades';
  if (one.what === 'factor') return 'factors';
  if (kind !== 'item' && !LOOKED_AT[kind]?.has(one.what)) return 'advert-kind';
  switch (one.what) {
    case 'value':
      return kind === 'part'
        ? 'facts-allow'
        : aValue(one.claim, one.claim.attribute, allowedOf(one.claim.value), auditCase);
    case 'wording':
      return aWording(one, auditCase);
    case 'measure':
      return one.claim.withMore ? 'with-more' : byFacts(auditCase, one.claim.attribute);
    case 'year':
      return one.claim.kind === 'made' ? 'undated' : 'year-of-other';
    case 'age':
      return 'undated';
    case 'count':
      return aNumber(auditCase);
    case 'place':
      return 'place-unknown';
    case 'fit':
      return kind === 'part' ? 'facts-allow' : 'advert-kind';
    case 'serial':
      return auditCase.serial?.claim === one.claim ? 'undated' : 'not-deciding';
    case 'caution':
      return 'not-called-for';
  }
}

function allowedOf(value: string | boolean): Allowed {
  return typeof value === 'boolean' ? { kind: 'yes-no', value } : { kind: 'values', values: new Set([value]) };
}

/** Denials of features count; of words, years and numbers they don't. */
const DENIABLE: ReadonlySet<Claim['what']> = new Set<Claim['what']>(['value', 'wording']);

function notHeld({ stance, subject }: Stanced, what: Claim['what']): Reason | null {
  if (stance === 'likens') return 'likened';
  if (subject === 'other') return 'of-another';
  if (stance === 'quotes') return 'quoted';
  if (stance === 'guesses' && !DENIABLE.has(what)) return 'guessed';
  return stance === 'denies' && !DENIABLE.has(what) ? 'denied' : null;
}

function aName({ claim }: Extract<Claim, { what: 'name' }>, { claimed, reading }: AuditCase): Reason {
  const { of, stance, subject } = claim;
  if (stance === 'denies') return 'denied';
  const not = notHeld(claim, 'value');
  if (not) return not;
  if ('maker' in of) return 'maker-named';
  if ('model' in of && claimed.includes(of.model)) return 'claimed-model';
  if ('family' in of && reading.claimedFamily === of.family && subject === 'this') return 'claimed-family';
  return stance === 'guesses' ? 'guessed' : 'named-only';
}

function aWording({ claim }: Extract<Claim, { what: 'wording' }>, auditCase: AuditCase): Reason {
  const { means, mind, never } = claim.entry;
  if (!means && !mind && !never) return 'a-term';
  const isFeature = means !== undefined && 'is' in means;
  if (!isFeature && claim.stance !== 'says') return claim.stance === 'denies' ? 'denied' : 'guessed';
  if (!means) return 'a-term';
  if ('made' in means || 'ageAtLeast' in means) return 'undated';
  if ('madeUnder' in means) return aNumber(auditCase);
  const attribute = attributeOf(means.attribute, claim.pack, auditCase.knowledge);
  if (!attribute) return 'no-fact';
  const allowed = 'is' in means ? allowedBy(means.is, attribute) : null;
  return allowed ? aValue(claim, attribute, allowed, auditCase) : byFacts(auditCase, attribute);
}

function aNumber({ claimed }: AuditCase): Reason {
  if (claimed.length === 0) return 'no-model';
  return claimed.every((model) => model.def.number === undefined) ? 'number-unknown' : 'facts-allow';
}

function aValue(claim: Stanced, attribute: AttributeKnown, allowed: Allowed, auditCase: AuditCase): Reason {
  const held = hold(auditCase, attribute, allowed, claim.stance === 'denies');
  if (held?.verdict !== 'agrees') return byFacts(auditCase, attribute);
  return claim.stance === 'guesses' ? 'guessed' : 'every-model';
}

/** What the facts of the models that it is held against leave open. */
function byFacts(auditCase: AuditCase, attribute: AttributeKnown): Reason {
  const { each, all } = heldAgainst(auditCase);
  const held = each.length > 0 ? each : all;
  if (held.length === 0) return 'no-model';
  const inForce = held.map(({ model, run }) => factsInForce(model, attribute.ref, conditionsOf(auditCase, run)));
  if (inForce.every(({ facts }) => facts.length === 0)) return 'no-fact';
  if (inForce.every(({ whole }) => !whole)) return 'sometimes-only';
  return each.length > 0 ? 'facts-allow' : 'not-all-models';
}
