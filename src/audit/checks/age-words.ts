import type { Stanced } from '../../claims/types';
import { askTexts } from '../../text/catalogue/asks';
import { findingTexts } from '../../text/catalogue/findings';
import type { AuditCase } from '../case';
import { isAsserted } from '../claims-held';
import { grouped } from '../grouped';
import { sourceOf } from '../source-of';
import type { Finding, Known } from '../types';
import { askOf, saidEach } from '../words';
import { STOCK_YEARS, yearsClaimed } from '../years';
import { knownRun } from './serial-model';

const texts = findingTexts.ageWords;

/** What is known of when the thing was made, as a span, and whose knowledge it is. */
interface MadeKnown {
  from: number | null;
  to: number | null;
  basis: string;
  known: Known[];
}

/** Words of age ("antique", "Victorian") and, where no serial dates the thing, years, against when it was made. */
export function ageWords(auditCase: AuditCase): Finding[] {
  const made = madeKnown(auditCase);
  if (!made) return [];
  return [...words(auditCase, made), ...ages(auditCase, made), ...years(auditCase, made)];
}

function madeKnown(auditCase: AuditCase): MadeKnown | null {
  const { serial, claimed } = auditCase;
  const refs = new Set(claimed.map((model) => model.ref));
  const run = serial?.usable
    ? serial.runs.find((one) => one.year !== null && (refs.size === 0 || one.models.some((ref) => refs.has(ref))))
    : undefined;
  if (serial && run?.year)
    return {
      // A block lasted some years.
      from: run.year,
      to: run.year + STOCK_YEARS,
      basis: texts.knownSerial(serial.claim.quote, String(run.year)),
      known: [knownRun(run, auditCase)],
    };
  const model = claimed.find((one) => one.def.made?.from !== undefined || one.def.made?.to !== undefined);
  if (!model?.def.made) return null;
  const { from = null, to = null } = model.def.made;
  const basis = texts.knownModel(model.label, texts.years(from, to));
  const source = sourceOf(auditCase.knowledge, model.pack, model.def.source);
  return { from, to, basis, known: [{ pack: model.pack, entry: model.id, text: basis, source }] };
}

function words(auditCase: AuditCase, made: MadeKnown): Finding[] {
  const { reading, year } = auditCase;
  const said = reading.wordings.filter((claim) => isAsserted(claim) && claim.stance === 'says');
  return grouped(said, ({ pack, entry }) => `${pack}/${entry.id}`).flatMap((claims) => {
    const { entry } = claims[0];
    const means = entry.means;
    const limit =
      means && 'ageAtLeast' in means
        ? { from: null, to: year - means.ageAtLeast, surelyTo: year - means.ageAtLeast - 1 }
        : means && 'made' in means
          ? { from: means.made.from ?? null, to: means.made.to ?? null, surelyTo: means.made.to ?? null }
          : null;
    if (!limit) return [];
    const wrong = apart(made, limit);
    // Of one made in the year that lies just so many back nobody knows whether it has reached that age.
    const right =
      made.to !== null &&
      limit.surelyTo !== null &&
      made.to <= limit.surelyTo &&
      (limit.from === null || (made.from !== null && made.from >= limit.from));
    if (!wrong && !right) return [];
    const firm = entry.use !== 'loose';
    return [finding(auditCase, claims, made, wrong ? (firm ? 'disproved' : 'caution') : 'agrees', entry.id)];
  });
}

/** "Over 100 years old", where even the oldest of them is younger. */
function ages(auditCase: AuditCase, made: MadeKnown): Finding[] {
  const { reading, year } = auditCase;
  const wrong = reading.ages
    .filter((claim) => isAsserted(claim) && claim.stance === 'says')
    .filter((claim) => apart(made, { from: null, to: year - claim.atLeast }));
  return grouped(wrong, ({ atLeast }) => String(atLeast)).map((claims) =>
    finding(auditCase, claims, made, 'disproved', String(claims[0].atLeast)),
  );
}

/** Years that the advert gives, against the span in which the model was made; a serial's year is another check's. */
function years(auditCase: AuditCase, made: MadeKnown): Finding[] {
  const { reading, serial } = auditCase;
  if (serial?.runs.some((run) => run.year !== null)) return [];
  const wrong = yearsClaimed(reading).filter((claim) => {
    const slack = claim.approximate ? 5 : 1;
    return apart(made, { from: claim.from - slack, to: claim.to + slack });
  });
  const span = ({ from, to }: { from: number; to: number }): string => `${from}-${to}`;
  return grouped(wrong, span).map((claims) => finding(auditCase, claims, made, 'disproved', span(claims[0])));
}

/** Both spans are known well enough to say that they don't meet. */
function apart(made: MadeKnown, limit: { from: number | null; to: number | null }): boolean {
  const after = made.from !== null && limit.to !== null && made.from > limit.to;
  const before = made.to !== null && limit.from !== null && made.to < limit.from;
  return after || before;
}

function finding(
  auditCase: AuditCase,
  claims: readonly [Stanced, ...Stanced[]],
  made: MadeKnown,
  standing: 'disproved' | 'caution' | 'agrees',
  key: string,
): Finding {
  return {
    id: `age-words:${key}`,
    check: 'age-words',
    standing,
    attribute: null,
    said: saidEach(claims),
    known: made.known,
    text: texts[standing](claims[0].quote, made.basis),
    ask: standing === 'disproved' ? askOf(askTexts.made, auditCase) : null,
  };
}
