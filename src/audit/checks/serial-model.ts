import { onSale } from '../../claims/claimed';
import type { Run } from '../../pack/serials/run';
import { askTexts } from '../../text/catalogue/asks';
import { findingTexts } from '../../text/catalogue/findings';
import type { AuditCase } from '../case';
import { isGuessed } from '../serial-case';
import type { Finding, Known } from '../types';
import { askOf, modelsText, saidEach, saidOf } from '../words';

const texts = findingTexts.serialModel;

/** Was the advert's serial allotted to the model that the advert names? */
export function serialModel(auditCase: AuditCase): Finding[] {
  const { serial, claimed, reading, knowledge } = auditCase;
  const model = claimed.find((one) => !one.isType);
  if (!serial?.usable || !model || serial.runs.length === 0) return [];
  const refs = new Set(claimed.map((one) => one.ref));
  const names = onSale(reading.names).filter((name) => 'model' in name.of && refs.has(name.of.model.ref));
  const own = serial.runs.filter((run) => run.models.some((ref) => refs.has(ref)));
  const shown = own.length > 0 ? own : serial.runs;
  const allotted = modelsText([...new Set(shown.flatMap((run) => run.models))], knowledge);
  const agrees = own.length > 0;
  const guessed = isGuessed(serial, names);
  return [
    {
      id: `serial-model:${serial.claim.normal}`,
      check: 'serial-model',
      standing: agrees ? 'agrees' : guessed ? 'unproved' : 'disproved',
      attribute: null,
      said: [...saidEach(names, 1), saidOf(serial.claim)],
      known: shown.slice(0, 3).map((run) => knownRun(run, auditCase)),
      text: agrees
        ? texts.agrees(serial.claim.quote, model.label)
        : texts.disproved(serial.claim.quote, allotted, model.label),
      ask: agrees ? null : askOf(askTexts.serialPhoto, auditCase),
    },
  ];
}

export function knownRun(run: Run, { knowledge }: AuditCase): Known {
  return {
    pack: run.pack,
    entry: run.entry,
    text: texts.known(
      modelsText(run.models, knowledge),
      run.first,
      run.last,
      run.year === null ? '' : String(run.year),
      run.place ?? '',
    ),
    source: run.source,
  };
}
