import { findingTexts } from '../../text/catalogue/findings';
import type { AuditCase } from '../case';
import { isAsserted } from '../claims-held';
import { grouped } from '../grouped';
import { sourceOf } from '../source-of';
import type { Finding } from '../types';
import { askOf, saidEach, say } from '../words';

/** Words that packs weigh by themselves: what to mind of them, and claims that are true of no model. */
export function wording(auditCase: AuditCase): Finding[] {
  const { reading, knowledge } = auditCase;
  const weighed = reading.wordings.filter(
    (claim) => isAsserted(claim) && claim.stance === 'says' && (claim.entry.mind || claim.entry.never),
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
        standing: entry.never ? 'disproved' : 'caution',
        attribute: null,
        said: saidEach(claims),
        known: [{ pack, entry: entry.id, text: say(entry.never ?? entry.mind!), source }],
        text,
        ask: entry.ask ? askOf(entry.ask, auditCase) : null,
      } satisfies Finding,
    ];
  });
}
