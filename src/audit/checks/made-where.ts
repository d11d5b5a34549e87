import { findingTexts } from '../../text/catalogue/findings';
import type { AuditCase } from '../case';
import { isAsserted } from '../claims-held';
import { sourceOf } from '../source-of';
import type { Finding, Known } from '../types';
import { saidEach } from '../words';
import { knownRun } from './serial-model';

const texts = findingTexts.madeWhere;

/** Where the advert says it was made, against the place of its serial's run, else the places where its model was made. */
export function madeWhere(auditCase: AuditCase): Finding[] {
  const { reading, claimed, serial, knowledge } = auditCase;
  const model = claimed.find((one) => !one.isType);
  return reading.places
    .filter((claim) => isAsserted(claim) && claim.stance === 'says')
    .flatMap((claim) => {
      const runs = serial?.usable
        ? serial.runs.filter((run) => run.place !== null && (!model || run.models.includes(model.ref)))
        : [];
      const places = runs.length > 0 ? runs.map((run) => run.place!) : (model?.def.places ?? []);
      if (places.length === 0) return [];
      const right = places.some((place) => place.toLowerCase() === claim.place.toLowerCase());
      const shown = findingTexts.claimFact.or([...new Set(places)]);
      const known: Known[] =
        runs.length > 0
          ? runs.slice(0, 2).map((run) => knownRun(run, auditCase))
          : [
              {
                pack: model!.pack,
                entry: model!.id,
                text: texts.known(model!.label, shown),
                source: sourceOf(knowledge, model!.pack, model!.def.source),
              },
            ];
      const label = model?.label ?? serial!.claim.quote;
      const wrong =
        runs.length > 0
          ? texts.serial(claim.quote, serial!.claim.quote, shown)
          : texts.disproved(claim.quote, label, shown);
      return [
        {
          id: `made-where:${claim.field}:${claim.start}`,
          check: 'made-where',
          standing: right ? 'agrees' : 'disproved',
          attribute: null,
          said: saidEach([claim]),
          known,
          text: right ? texts.agrees(claim.quote, label) : wrong,
          ask: right ? null : texts.ask,
        } satisfies Finding,
      ];
    });
}
