import { clauseAt, quoteOf, type TextPart, tokenAt } from '../../claims/part-text';
import type { Quote } from '../../claims/types';
import type { Listing } from '../../listing/types';
import type { Knowledge } from '../../pack/knowledge';
import { type AuditOptions, caseOf, foundIn, shownOf } from '../audit';
import { type Claim, claimsOf, packOf } from './claims';
import { droppedIn } from './dropped';
import { meansOf } from './meaning';
import { came, findingsOn } from './rests-on';
import type { CameFinding, Explained, Explanation } from './types';
import { whyNothing } from './why-nothing';

/**
 * Why the audit of an advert says what it says: each phrase that was found in its words, how it was read, by what that
 * was decided, and what came of it. Computed anew, so that an audit which nobody asks to explain pays nothing for it.
 * @returns phrases by field and place, the longer first; offsets as in findings.
 */
export function explain(listing: Listing, knowledge: Knowledge, options: AuditOptions): Explanation {
  const auditCase = caseOf(listing, knowledge, options);
  const { reading } = auditCase;
  const found = foundIn(auditCase);
  // What is shown is chosen from copies: findings that say the same are put together in place.
  const shown = shownOf(structuredClone(found));
  const claims = claimsOf(reading);
  const restingOn = new Map(claims.map((one) => [one, findingsOn(one, found, shown)]));
  const partOf = (field: string): TextPart | undefined => reading.parts.find((part) => part.field === field);

  const claimed = claims.map((one): Explained => {
    const { claim } = one;
    const { field, quote, start, end } = claim;
    const findings = withTwins(one, restingOn);
    return {
      field,
      quote,
      start,
      end,
      what: one.what,
      means: meansOf(one, knowledge),
      pack: packOf(one),
      clause: clauseOf(partOf(field), start),
      stance: 'stance' in claim ? claim.stance : null,
      subject: 'subject' in claim ? claim.subject : null,
      why: 'why' in claim ? (claim.why ?? []) : [],
      findings,
      reason: reasonOf(one, findings, () => whyNothing(one, auditCase)),
      by: null,
    };
  });
  const dropped = reading.parts.flatMap((part) =>
    droppedIn(part, reading, knowledge, listing.language).map(
      ({ start, end, ...rest }): Explained => ({
        ...quoteOf(part, start, end),
        ...rest,
        clause: clauseOf(part, start),
        stance: null,
        subject: null,
        why: [],
        findings: [],
      }),
    ),
  );
  const told = new Set([...restingOn.values()].flat().map(({ id }) => id));
  return {
    phrases: [...claimed, ...dropped].sort(byPlace),
    wordless: found.filter(({ id }) => !told.has(id)).map((finding) => came(finding, null, shown)),
  };
}

/** A name tells which model it is even where findings rest on it. */
function reasonOf(
  { what }: Claim,
  findings: readonly CameFinding[],
  why: () => Explained['reason'],
): Explained['reason'] {
  return what === 'name' || findings.length === 0 ? why() : null;
}

/** A finding quotes the first places of what is said over and over: the others share it. */
function withTwins(one: Claim, restingOn: ReadonlyMap<Claim, CameFinding[]>): CameFinding[] {
  const own = restingOn.get(one) ?? [];
  if (own.length > 0 || !('stance' in one.claim) || one.claim.subject === 'other') return own;
  for (const [other, findings] of restingOn) if (findings.length > 0 && isTwin(one, other)) return findings;
  return [];
}

function isTwin(one: Claim, other: Claim): boolean {
  const [a, b] = [one.claim, other.claim];
  if (!('stance' in a) || !('stance' in b) || a.stance !== b.stance || a.subject !== b.subject) return false;
  if (one.what === 'value' && other.what === 'value')
    return one.claim.attribute === other.claim.attribute && one.claim.value === other.claim.value;
  if (one.what === 'wording' && other.what === 'wording') return one.claim.entry === other.claim.entry;
  return one.what === 'caution' && other.what === 'caution' && one.claim.entry === other.claim.entry;
}

function clauseOf(part: TextPart | undefined, start: number): Quote | null {
  const clause = part && clauseAt(part, tokenAt(part, start));
  return part && clause ? quoteOf(part, clause.start, clause.end) : null;
}

const FIELDS = ['title', 'description', 'details', 'condition', 'serials', 'price'];

function byPlace(a: Explained, b: Explained): number {
  return FIELDS.indexOf(a.field) - FIELDS.indexOf(b.field) || a.start - b.start || b.end - a.end;
}
