import { findingTexts } from '../../text/catalogue/findings';
import type { AuditCase } from '../case';
import { isAsserted } from '../claims-held';
import { sourceOf } from '../source-of';
import type { Finding } from '../types';
import { saidEach, say } from '../words';

/** Words that packs weigh by themselves: what to mind of them, and claims that are true of no model. */
export function wording({ reading, knowledge }: AuditCase): Finding[] {
  const byEntry = new Map<string, typeof reading.wordings>();
  for (const claim of reading.wordings) {
    if (!isAsserted(claim) || claim.stance !== 'says' || !(claim.entry.mind || claim.entry.never)) continue;
    const key = `${claim.pack}/${claim.entry.id}`;
    byEntry.set(key, [...(byEntry.get(key) ?? []), claim]);
  }
  return [...byEntry].flatMap(([key, claims]) => {
    const { entry, pack, quote } = claims[0]!;
    const text = entry.never
      ? findingTexts.wording.never(quote, say(entry.never))
      : entry.mind
        ? say(entry.mind)
        : null;
    if (!text) return [];
    const source = sourceOf(knowledge, pack, entry.source);
    return [
      {
        id: `wording:${key}`,
        check: 'wording',
        standing: entry.never ? 'disproved' : 'caution',
        attribute: null,
        said: saidEach(claims),
        known: [{ pack, entry: entry.id, text: say(entry.never ?? entry.mind!), source }],
        text,
        ask: entry.ask ? say(entry.ask) : null,
      } satisfies Finding,
    ];
  });
}
