import { onSale } from '../../claims/claimed';
import { readAsDigits } from '../../pack/misreadings';
import { formText } from '../../pack/serial-form';
import { askTexts } from '../../text/catalogue/asks';
import { findingTexts } from '../../text/catalogue/findings';
import type { AuditCase } from '../case';
import { isGuessed, type SerialCase } from '../serial-case';
import { sourceOf } from '../source-of';
import type { Finding, Known, Standing } from '../types';
import { askOf, modelsText, saidOf } from '../words';
import { knownRun } from './serial-model';

const texts = findingTexts.serialForm;

/**
 * A serial that no table knows: a slip for one that it knows, not of its maker's form, or missing in a table. That
 * disproves it only where the table calls itself complete, or the advert says outright that such a number is the
 * serial: other tables have gaps and mistakes, and other numbers are taken for the serial.
 */
export function serialForm(auditCase: AuditCase): Finding[] {
  const { serial } = auditCase;
  switch (serial?.verdict) {
    case 'unknown':
      return notAllotted(serial, auditCase);
    case 'misread':
      return [misread(serial, auditCase)];
    case 'bad-form':
      return [badForm(serial, auditCase)];
    default:
      return [];
  }
}

function misread(serial: SerialCase, auditCase: AuditCase): Finding {
  const { claim, suggestions } = serial;
  const [first] = suggestions;
  const models = modelsText([...new Set(first!.runs.flatMap((run) => run.models))], auditCase.knowledge);
  const known = suggestions.slice(0, 3).flatMap(({ runs }) => (runs[0] ? [knownRun(runs[0], auditCase)] : []));
  return finding(serial, auditCase, known, texts.misread(claim.quote, first!.normal, models), 'unproved');
}

function badForm(serial: SerialCase, auditCase: AuditCase): Finding {
  const known = serial.forms.slice(0, 3).map(
    ({ pack, scheme }): Known => ({
      pack,
      entry: scheme.id,
      text: texts.formKnown(scheme.maker ?? texts.anyMaker, formText(scheme)),
      source: sourceOf(auditCase.knowledge, pack, scheme.source),
    }),
  );
  const isSure =
    serial.claim.named && !isGuessed(serial, onSale(auditCase.reading.names)) && !isSlip(serial, auditCase);
  return finding(serial, auditCase, known, texts.badForm(serial.claim.quote), isSure ? 'disproved' : 'unproved');
}

/** "29731O": with its letters read as the digits that they look like it has such a form. */
function isSlip({ claim: { normal } }: SerialCase, { knowledge }: AuditCase): boolean {
  const read = readAsDigits(normal);
  return read !== normal && knowledge.serials.schemesOf(read).length > 0;
}

/** Missing in a table that calls itself complete: shown with the blocks on either side of it. */
function notAllotted(serial: SerialCase, auditCase: AuditCase): Finding[] {
  const { knowledge, reading } = auditCase;
  const { claim } = serial;
  const complete = knowledge.serials
    .schemesOf(claim.normal)
    .filter(({ scheme, pack }) => scheme.complete && reading.covering.has(pack));
  if (complete.length === 0) return [];
  const known = complete.flatMap(({ pack, scheme, number }): Known[] => [
    {
      pack,
      entry: scheme.id,
      text: texts.complete(scheme.maker ?? texts.anyMaker, formText(scheme)),
      source: sourceOf(knowledge, pack, scheme.source),
    },
    ...knowledge.serials.around(pack, scheme.id, number, 1).map((run) => knownRun(run, auditCase)),
  ]);
  const standing = isGuessed(serial, onSale(auditCase.reading.names)) ? 'unproved' : 'disproved';
  return [finding(serial, auditCase, known, texts.gap(claim.quote), standing)];
}

function finding(
  { claim }: SerialCase,
  auditCase: AuditCase,
  known: Known[],
  text: string,
  standing: Standing,
): Finding {
  return {
    id: `serial-form:${claim.normal}`,
    check: 'serial-form',
    standing,
    attribute: null,
    said: [saidOf(claim)],
    known,
    text,
    ask: askOf(askTexts.serialAgain, auditCase),
  };
}
