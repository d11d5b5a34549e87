import { askTexts } from '../../text/catalogue/asks';
import { findingTexts } from '../../text/catalogue/findings';
import type { AuditCase } from '../case';
import type { Finding } from '../types';
import { askOf, saidEach, saidOf } from '../words';
import { yearsAgree, yearsDisagree } from '../years';
import { knownRun } from './serial-model';

const texts = findingTexts.serialYear;

/** Was the serial allotted when the advert says the thing was made? Bought and launched years are not held against it. */
export function serialYear(auditCase: AuditCase): Finding[] {
  const { serial, claimed, reading } = auditCase;
  if (!serial?.usable || serial.runs.length === 0) return [];
  const refs = new Set(claimed.map((one) => one.ref));
  const own = serial.runs.filter((run) => run.models.some((ref) => refs.has(ref)));
  const runs = own.length > 0 ? own : serial.runs;
  const wrong = yearsDisagree(runs, reading);
  const right = yearsAgree(runs, reading);
  const dated = runs.filter((run) => run.year !== null);
  const years = [...new Set(dated.map((run) => run.year))].join(' / ');
  const known = dated.slice(0, 3).map((run) => knownRun(run, auditCase));
  const make = (standing: 'disproved' | 'agrees', claims: typeof wrong): Finding[] =>
    claims.length === 0
      ? []
      : [
          {
            id: `serial-year:${serial.claim.normal}:${standing}`,
            check: 'serial-year',
            standing,
            attribute: null,
            said: [...saidEach(claims, 2), saidOf(serial.claim)],
            known,
            text:
              standing === 'disproved'
                ? texts.disproved(serial.claim.quote, years, claims[0]!.quote)
                : texts.agrees(serial.claim.quote, years),
            ask: standing === 'disproved' ? askOf(askTexts.made, auditCase) : null,
          },
        ];
  return [...make('disproved', wrong), ...make('agrees', wrong.length > 0 ? [] : right)];
}
