import { readClaims } from '../claims/read';
import type { NameClaim, Reading } from '../claims/reading';
import { candidatesOf, identify } from '../identify/identify';
import type { Listing } from '../listing/types';
import type { Knowledge } from '../pack/knowledge';
import type { Rate } from '../pack/schema/prices';
import type { Observation } from '../price/observation';
import type { AuditCase } from './case';
import { checks } from './checks/index';
import { likelyOf } from './likely';
import { mergeAgreeing } from './merge-agreeing';
import { nextEvidenceOf } from './next-evidence';
import { priceReport } from './price-report';
import { deciding, serialCase, serialReport } from './serial-case';
import type { Audit, CheckId, ClaimedName, Finding } from './types';

export interface AuditOptions {
  /** The day of the audit, an ISO 8601 date: the engine has no clock. */
  asOf: string;
  /** What the viewer has seen: attribute ref -> a value of it (an option of `nextEvidence`), null for "can't tell". */
  answers?: Record<string, string | boolean | null>;
  /** The user's own price observations. */
  observations?: readonly Observation[];
  /** Exchange rates that the user has typed in, beside those of the packs. */
  rates?: readonly Rate[];
  preferences?: Record<string, unknown>;
}

/** Only a thing on sale is held against facts; a part, a wish or a service claims nothing about a machine. */
const CHECKED: Record<Reading['kind'], ReadonlySet<CheckId> | 'all'> = {
  item: 'all',
  part: new Set<CheckId>(['fits', 'caution']),
  lot: new Set<CheckId>(['caution']),
  wanted: new Set(),
  service: new Set(),
  list: new Set(),
  none: new Set(),
};
const MOST_UNPROVED = 3;

/**
 * Holds what an advert says against what is known. Pure: no page, storage, clock or network.
 * @param knowledge from `compile`. Packs that don't cover the advert say nothing.
 * @returns the audit contract; never throws for a listing that `settle` or `readDraft` gave.
 */
export function audit(listing: Listing, knowledge: Knowledge, options: AuditOptions): Audit {
  return report(caseOf(listing, knowledge, options));
}

/** One advert put together with what is known, before any check looks at it. */
export function caseOf(listing: Listing, knowledge: Knowledge, options: AuditOptions): AuditCase {
  const reading = readClaims(listing, knowledge);
  const isItem = reading.kind === 'item';
  const serials = isItem ? reading.serials.map((claim) => serialCase(claim, reading, knowledge)) : [];
  const serial = deciding(serials);
  const answers = options.answers ?? {};
  const isCovered = isItem && reading.covering.size > 0;
  const identified = isCovered
    ? identify({ reading, serial: serial?.claim ?? null, answers, byHand: listing.byHand }, knowledge)
    : null;
  const candidates = identified ? candidatesOf(identified) : [];
  const { asOf, observations = [], rates = [] } = options;
  return {
    listing,
    knowledge,
    reading,
    asOf,
    year: Number(asOf.slice(0, 4)),
    claimed: isItem ? reading.claimedModels : [],
    serials,
    serial,
    answers,
    identified,
    candidates,
    price: priceReport({ listing, reading, knowledge, asOf, candidates, observations, rates }),
  };
}

/** All that the checks find that look at adverts of this kind, before it is chosen what is shown. */
export function foundIn(auditCase: AuditCase): Finding[] {
  const { kind, covering } = auditCase.reading;
  const wanted = CHECKED[kind];
  if (covering.size === 0) return [];
  return checks.filter(([id]) => wanted === 'all' || wanted.has(id)).flatMap(([, check]) => check(auditCase));
}

/** What is shown of what was found. */
export function shownOf(found: readonly Finding[]): Finding[] {
  return keepMostTelling(mergeAgreeing(found));
}

export function report(auditCase: AuditCase): Audit {
  const { listing, knowledge, reading, serials, serial } = auditCase;
  return {
    schema: 1,
    kind: reading.kind,
    listing: {
      title: listing.title,
      description: listing.description,
      details: listing.details,
      price: listing.price,
      serials: listing.serials,
      condition: listing.condition,
      place: listing.place,
      photos: listing.photos,
      fields: listing.fields,
    },
    claimedModel: auditCase.claimed[0]?.ref ?? null,
    claimed: reading.names.flatMap(claimedName),
    serial: serialReport(serial),
    serials: serials.map(serialReport),
    likely: likelyOf(auditCase),
    findings: shownOf(foundIn(auditCase)),
    nextEvidence: nextEvidenceOf(auditCase),
    price: auditCase.price.report,
    packs: knowledge.packs
      .filter((pack) => reading.covering.has(pack.id))
      .map((pack) => ({ id: pack.id, edition: pack.about.edition, sealedBy: pack.sealedBy })),
  };
}

/** A maker's name alone names no model and no family. */
function claimedName(name: NameClaim): ClaimedName[] {
  const { field, quote, start, end, stance } = name;
  if ('maker' in name.of) return [];
  const of = 'model' in name.of ? { model: name.of.model.ref } : { family: name.of.family.ref };
  return [{ ...of, field, quote, start, end, stance }];
}

/** Checks that weigh a word by what is known of this very model. */
const WEIGHED: ReadonlySet<CheckId> = new Set(['rarity', 'age-words']);

/** At most three "not shown yet": those with words of the advert behind them first, then what is missing. */
function keepMostTelling(findings: readonly Finding[]): Finding[] {
  const unproved = findings.filter((finding) => finding.standing === 'unproved');
  const kept = new Set(
    [...unproved].sort((a, b) => Number(b.said.length > 0) - Number(a.said.length > 0)).slice(0, MOST_UNPROVED),
  );
  // Words that another check has weighed by what is known need no general advice.
  const decided = findings.filter(({ check, standing }) => standing === 'disproved' || WEIGHED.has(check));
  const order = ['disproved', 'unproved', 'caution', 'agrees'];
  return findings
    .filter((finding) => finding.standing !== 'unproved' || kept.has(finding))
    .filter((finding) => finding.check !== 'wording' || finding.standing === 'disproved' || !repeats(finding, decided))
    .sort((a, b) => order.indexOf(a.standing) - order.indexOf(b.standing));
}

function repeats(finding: Finding, decided: readonly Finding[]): boolean {
  const shown = decided.flatMap((one) => one.said);
  return finding.said.every((said) =>
    shown.some((one) => one.field === said.field && one.start <= said.start && one.end >= said.end),
  );
}
