import { formText } from '../../pack/serial-form';
import { findingTexts } from '../../text/catalogue/findings';
import type { AuditCase } from '../case';
import type { SerialCase } from '../serial-case';
import { sourceOf } from '../source-of';
import type { Finding, Known } from '../types';
import { saidOf } from '../words';
import { knownRun } from './serial-model';

const texts = findingTexts.serialForm;

/**
 * A serial that no table knows: a slip for one that it knows, not of its maker's form, or missing in a table that calls
 * itself complete. None of these disproves anything: tables have gaps and mistakes.
 */
export function serialForm(auditCase: AuditCase): Finding[] {
  const { serial } = auditCase;
  if (serial?.verdict === 'unknown') return notAllotted(serial, auditCase);
  if (!serial || (serial.verdict !== 'misread' && serial.verdict !== 'bad-form')) return [];
  const { claim, suggestions, forms } = serial;
  const known: Known[] =
    serial.verdict === 'misread'
      ? suggestions.slice(0, 3).flatMap(({ runs }) => (runs[0] ? [knownRun(runs[0], auditCase)] : []))
      : forms.slice(0, 3).map(({ pack, scheme }) => ({
          pack,
          entry: scheme.id,
          text: texts.formKnown(scheme.maker ?? texts.anyMaker, formText(scheme)),
          source: null,
        }));
  return [
    {
      id: `serial-form:${claim.normal}`,
      check: 'serial-form',
      standing: 'unproved',
      attribute: null,
      said: [saidOf(claim)],
      known,
      text:
        serial.verdict === 'misread' ? texts.misread(claim.quote, suggestions[0]!.normal) : texts.badForm(claim.quote),
      ask: texts.ask,
    },
  ];
}

function notAllotted({ claim }: SerialCase, { knowledge, reading }: AuditCase): Finding[] {
  const complete = knowledge.serials
    .schemesOf(claim.normal)
    .filter(({ scheme, pack }) => scheme.complete && reading.covering.has(pack));
  if (complete.length === 0) return [];
  const known = complete.map(({ pack, scheme }) => {
    const text = texts.complete(scheme.maker ?? texts.anyMaker, formText(scheme));
    return { pack, entry: scheme.id, text, source: sourceOf(knowledge, pack, scheme.source) };
  });
  return [
    {
      id: `serial-form:${claim.normal}`,
      check: 'serial-form',
      standing: 'unproved',
      attribute: null,
      said: [saidOf(claim)],
      known,
      text: texts.unknown(claim.quote),
      ask: texts.ask,
    },
  ];
}
