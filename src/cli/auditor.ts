import type { Explanation } from '../audit/explain/types';
import type { Audit } from '../audit/types';
import { audit, compile, explain } from '../engine';
import type { Listing } from '../listing/types';
import { auditText } from './audit-text';
import { explainText } from './explain-text';
import { pageWidth } from './layout';
import { loadPacks } from './packs';
import { NONE_SEALED, type SealedPacks, sealsOf } from './sealed-packs';

/** An engine with its packs and its day, ready for one listing or many. */
export interface Auditor {
  audit(listing: Listing): Audit;
  /** Laid out for a terminal. */
  text(audit: Audit): string;
  /** Why: each phrase that was found, and what came of it. */
  explain(listing: Listing): Explanation;
  explainText(explanation: Explanation): string;
}

/**
 * @param packs files beside the shipped trade pack; @param asOf the day of the audit, ISO 8601.
 * @throws BadInput on a file that is no pack.
 */
export function auditorOf(packs: readonly string[], asOf: string, sealed: SealedPacks = NONE_SEALED): Auditor {
  const knowledge = compile(loadPacks(packs, sealed), sealsOf(sealed));
  return {
    audit: (listing) => audit(listing, knowledge, { asOf }),
    text: (answer) => auditText(answer, knowledge, pageWidth(process.stdout.columns)),
    explain: (listing) => explain(listing, knowledge, { asOf }),
    explainText: (explanation) => explainText(explanation, pageWidth(process.stdout.columns)),
  };
}

/** Today, in UTC. Only the command line asks a clock: the engine is told. */
export function today(): string {
  return new Date().toISOString().slice(0, 10);
}
