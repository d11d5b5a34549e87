import type { Finding } from './types';
import { saidEach } from './words';

/** "Cast iron" and "not aluminium" agree with one fact: one finding, with all that the advert says of it. */
export function mergeAgreeing(findings: readonly Finding[]): Finding[] {
  const byFact = new Map<string, Finding>();
  return findings.flatMap((finding) => {
    if (finding.standing !== 'agrees') return [finding];
    const key = finding.check + finding.known.map((known) => `${known.pack}/${known.entry} ${known.text}`).join();
    const there = byFact.get(key);
    if (there) {
      there.said = saidEach([...there.said, ...finding.said]);
      return [];
    }
    byFact.set(key, finding);
    return [finding];
  });
}
