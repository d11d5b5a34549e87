import { askTexts } from '../../text/catalogue/asks';
import { findingTexts } from '../../text/catalogue/findings';
import type { AuditCase } from '../case';
import type { Finding } from '../types';
import { askOf, saidEach, saidOf } from '../words';
import { yearsAgree, yearsBesides, yearsDisagree } from '../years';
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
  const besides = wrong.length > 0 ? yearsBesides(runs, reading) : [];
  const number = serial.claim.quote;
  const textOf = {
    disproved: (said: string) => texts.disproved(number, years, said),
    unproved: (said: string) => texts.bothYears(number, years, said, besides[0]!.quote),
    agrees: () => texts.agrees(number, years),
  };
  const make = (standing: 'disproved' | 'unproved' | 'agrees', claims: typeof wrong): Finding[] =>
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
            text: textOf[standing](claims[0]!.quote),
            ask: standing === 'agrees' ? null : askOf(askTexts.made, auditCase),
          },
        ];
  return [
    ...make(besides.length > 0 ? 'unproved' : 'disproved', wrong),
    ...make('agrees', wrong.length > 0 ? [] : right),
  ];
}
