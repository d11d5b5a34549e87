import { allowedBy } from '../../pack/compile/facts';
import type { Wording } from '../../pack/schema/wording';
import { findingTexts } from '../../text/catalogue/findings';
import { attributeOf } from '../attribute-of';
import type { AuditCase } from '../case';
import { hold, isAsserted } from '../claims-held';
import { grouped } from '../grouped';
import { sourceOf } from '../source-of';
import type { Finding } from '../types';
import { askOf, saidEach, say } from '../words';

/** "Compact" of one that is known to be: general advice on the word would be silly. */
function isKnownToHold(auditCase: AuditCase, { means }: Wording, pack: string): boolean {
  if (!means || !('is' in means)) return false;
  const attribute = attributeOf(means.attribute, pack, auditCase.knowledge);
  const allowed = attribute && allowedBy(means.is, attribute);
  return attribute && allowed ? hold(auditCase, attribute, allowed, false)?.verdict === 'agrees' : false;
}

/** Words that packs weigh by themselves: what to mind of them, and claims that are true of no model. */
export function wording(auditCase: AuditCase): Finding[] {
  const { reading, knowledge } = auditCase;
  const weighed = reading.wordings.filter(
    (claim) =>
      isAsserted(claim) &&
      claim.stance === 'says' &&
      (claim.entry.mind || claim.entry.never) &&
      !isKnownToHold(auditCase, claim.entry, claim.pack),
  );
  return grouped(weighed, ({ pack, entry }) => `${pack}/${entry.id}`).flatMap((claims) => {
    const { entry, pack, quote } = claims[0];
    const text = entry.never
      ? findingTexts.wording.never(quote, say(entry.never))
      : entry.mind
        ? say(entry.mind)
        : null;
    if (!text) return [];
    const source = sourceOf(knowledge, pack, entry.source);
    return [
      {
        id: `wording:${pack}/${entry.id}`,
        check: 'wording',
        standing: entry.never && !claims.every(({ aside }) => aside) ? 'disproved' : 'caution',
        attribute: null,
        said: saidEach(claims),
        known: [{ pack, entry: entry.id, text: say(entry.never ?? entry.mind!), source }],
        text,
        ask: entry.ask ? askOf(entry.ask, auditCase) : null,
      } satisfies Finding,
    ];
  });
}
