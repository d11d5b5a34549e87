import type { Audit, CheckId, Finding } from '../../../../src/audit/types';
import { audit } from '../../../../src/engine';
import { readDraft } from '../../../../src/listing/draft';
import type { Draft } from '../../../../src/listing/types';
import type { Knowledge } from '../../../../src/pack/knowledge';
import { AS_OF, demoKnowledge } from '../../../corpus/labelled';

/** The trade pack and the invented club's, compiled once. */
export const demo: Knowledge = demoKnowledge();

export function auditOf(draft: Draft, knowledge = demo): Audit {
  return audit(readDraft(draft), knowledge, { asOf: AS_OF });
}

export function findingsOf(check: CheckId, draft: Draft, knowledge = demo): Finding[] {
  return auditOf(draft, knowledge).findings.filter((finding) => finding.check === check);
}

/** What a check finds, in short: "disproved: zigzag | KD372118". */
export function found(check: CheckId, draft: Draft, knowledge = demo): string[] {
  return findingsOf(check, draft, knowledge).map(
    ({ standing, said }) => `${standing}: ${said.map(({ quote }) => quote).join(' | ')}`,
  );
}

/** An advert for a Cressiter: cast iron, straight stitch, rotary hook, class 15, made 1949 to 1962 at Brindfold. */
export function cressiter(description: string, rest: Draft = {}): Draft {
  return { title: 'Grindlewade Cressiter sewing machine', language: 'en', description, ...rest };
}
