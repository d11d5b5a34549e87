import type { YearClaim } from '../claims/reading';
import type { ModelKnown } from '../pack/knowledge';
import type { AuditCase } from './case';
import { enquire, type NumberLine } from './enquiry';
import { sourceOf } from './source-of';

/**
 * Years of one kind, kept apart from those of other kinds: what the advert says in its own name, and what packs know of
 * the model. `to` is null where the end is open.
 */
export interface YearsOf {
  kind: 'made' | 'launched' | 'bought' | 'owned' | 'model' | 'price';
  from: number;
  to: number | null;
  /** Who knows it; null: the advert says it. */
  source: string | null;
}

/** A batch that a pack has on record of a model that the number may be. */
export interface Batch {
  model: string;
  size: number;
  date: string | null;
  source: string | null;
}

/** Where an advert's number stands among its neighbours, and the years around it. */
export interface NumberPlace {
  normal: string;
  lines: NumberLine[];
  years: YearsOf[];
  batches: Batch[];
}

const SAID = ['made', 'launched', 'bought', 'owned'] as const;
const MOST_YEARS = 5;

/** Null where the advert has no number, or packs that speak of it draw no line for it. */
export function numberPlace(auditCase: AuditCase): NumberPlace | null {
  const { serial, knowledge, reading, claimed, candidates } = auditCase;
  if (!serial) return null;
  const { normal, lines } = enquire(serial.claim.normal, null, knowledge);
  const own = lines.filter(({ pack, runs }) => reading.covering.has(pack) && runs.length > 0);
  if (own.length === 0) return null;
  const held = own.flatMap(({ runs }) => runs.filter(({ holds }) => holds).flatMap(({ models }) => models));
  const model = claimed[0] ?? candidates[0]?.model ?? null;
  return {
    ...{ normal, lines: own, years: [...saidYears(reading.years), ...(model ? knownYears(model, auditCase) : [])] },
    batches: [...new Set(held)].flatMap((ref) => batchesOf(knowledge.models.get(ref), auditCase)),
  };
}

function saidYears(claims: readonly YearClaim[]): YearsOf[] {
  const said = claims.flatMap(({ kind, from, to, stance, subject }): YearsOf[] => {
    const known = SAID.find((each) => each === kind);
    return known && stance === 'says' && subject === 'this' ? [{ kind: known, from, to, source: null }] : [];
  });
  const each = new Map(said.map((one) => [`${one.kind} ${one.from} ${one.to}`, one]));
  return [...each.values()].slice(0, MOST_YEARS);
}

function knownYears({ def: { made, launchPrice, source }, pack }: ModelKnown, { knowledge }: AuditCase): YearsOf[] {
  const span: YearsOf[] =
    made?.from === undefined
      ? []
      : [{ kind: 'model', from: made.from, to: made.to ?? null, source: sourceOf(knowledge, pack, source) }];
  if (!launchPrice) return span;
  const { year } = launchPrice;
  return [...span, { kind: 'price', from: year, to: year, source: sourceOf(knowledge, pack, launchPrice.source) }];
}

function batchesOf(model: ModelKnown | undefined, { knowledge }: AuditCase): Batch[] {
  return (model?.def.batches ?? []).map(({ size, date = null, source }) => ({
    ...{ model: model?.label ?? '', size, date, source: sourceOf(knowledge, model?.pack ?? '', source) },
  }));
}
