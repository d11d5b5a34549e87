import type { Reading } from '../claims/reading';
import type { Answers } from '../identify/evidence';
import type { Candidate, Identified } from '../identify/identify';
import { modelsMeant } from '../identify/names-heard';
import type { Listing } from '../listing/types';
import type { Knowledge, ModelKnown } from '../pack/knowledge';
import type { Run } from '../pack/serials/run';
import type { PriceCase } from './price-report';
import type { SerialCase } from './serial-case';

/** All that the checks look at: one advert, what its words say, what is known, and the day of the audit. */
export interface AuditCase {
  listing: Listing;
  knowledge: Knowledge;
  reading: Reading;
  /** ISO 8601 date of the audit, and its year. */
  asOf: string;
  year: number;
  /** The model that claims are held against, and the same thing in other packs. */
  claimed: readonly ModelKnown[];
  serials: readonly SerialCase[];
  /** The serial that decides, if any. */
  serial: SerialCase | null;
  answers: Answers;
  /** Which one it is likely to be; null for what is no thing on sale, or what no pack covers. */
  identified: Identified | null;
  /** Models and types with their probabilities, the likeliest first. */
  candidates: readonly Candidate[];
  price: PriceCase;
}

/** A model to hold claims against, with the run of the advert's serial where it is this model's. */
export interface HeldAgainst {
  model: ModelKnown;
  run: Run | null;
}

/**
 * A claim that no claimed model decides is disproved only if every model at this probability or more refutes it, and
 * as many of the others that those left out have less than it together.
 */
const NOT_TO_BE_OVERLOOKED = 0.05;

/** The claimed model in each pack that has it; where none is claimed, every model that the thing may well be. */
export function heldAgainst(auditCase: AuditCase): { each: HeldAgainst[]; all: HeldAgainst[] } {
  const held = withRun(auditCase);
  if (auditCase.claimed.length > 0) return { each: auditCase.claimed.map(held), all: [] };
  return { each: [], all: notToBeOverlooked(auditCase).map(({ model }) => held(model)) };
}

/** Less than one in a hundred is as good as nothing, and looking at thousands of those would be slow. */
const AS_GOOD_AS_NOTHING = 0.01;

/** All that the thing may be, whatever the advert names, with how likely each is. */
export function mayBe(auditCase: AuditCase): (HeldAgainst & { probability: number })[] {
  const held = withRun(auditCase);
  return auditCase.candidates
    .filter(({ probability }) => probability >= AS_GOOD_AS_NOTHING)
    .map(({ model, probability }) => ({ ...held(model), probability }));
}

function withRun({ serial }: AuditCase): (model: ModelKnown) => HeldAgainst {
  const runs = serial?.usable ? serial.runs : [];
  return (model) => ({ model, run: runs.find((run) => run.models.includes(model.ref)) ?? null });
}

/** A named maker's or family's models alone, as the advert would have it; else all that it can be. */
function notToBeOverlooked({ candidates, reading }: AuditCase): Candidate[] {
  const meant = modelsMeant(reading);
  const named = meant ? candidates.filter(({ model }) => meant.includes(model)) : [];
  const chosen = named.length > 0 ? named : candidates;
  const whole = chosen.reduce((sum, one) => sum + one.probability, 0);
  let left = whole;
  return chosen.filter(({ probability }) => {
    const isNeeded = Math.max(probability, left) >= NOT_TO_BE_OVERLOOKED * whole;
    left -= probability;
    return isNeeded;
  });
}
