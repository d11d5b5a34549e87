import { askTexts } from '../../text/catalogue/asks';
import { findingTexts } from '../../text/catalogue/findings';
import type { AuditCase } from '../case';
import { isAsserted } from '../claims-held';
import { grouped } from '../grouped';
import { sourceOf } from '../source-of';
import type { Finding, Known } from '../types';
import { askOf, saidEach } from '../words';
import { knownRun } from './serial-model';

const texts = findingTexts.madeWhere;

/** Where the advert says it was made, against the place of its serial's run, else the places where its model was made. */
export function madeWhere(auditCase: AuditCase): Finding[] {
  const { reading } = auditCase;
  const made = placesKnown(auditCase);
  if (made.places.length === 0) return [];
  const said = reading.places.filter((claim) => isAsserted(claim) && claim.stance === 'says' && !claim.aside);
  // One place said in several fields is one finding.
  return grouped(said, ({ place }) => place.toLowerCase()).map((claims) => {
    const { place, quote } = claims[0];
    const right = made.places.some((one) => one.toLowerCase() === place.toLowerCase());
    return {
      id: `made-where:${place.toLowerCase()}`,
      check: 'made-where',
      standing: right ? 'agrees' : 'disproved',
      attribute: null,
      said: saidEach(claims),
      known: made.known,
      text: (right ? made.agrees : made.disproved)(quote),
      ask: right ? null : askOf(askTexts.madeWhere, auditCase),
    };
  });
}

interface PlacesKnown {
  places: readonly string[];
  known: Known[];
  agrees: (quote: string) => string;
  disproved: (quote: string) => string;
}

function placesKnown(auditCase: AuditCase): PlacesKnown {
  const { claimed, serial, knowledge } = auditCase;
  const model = claimed.find((one) => !one.isType);
  const runs = serial?.usable
    ? serial.runs.filter((run) => run.place !== null && (!model || run.models.includes(model.ref)))
    : [];
  const places = runs.length > 0 ? runs.map((run) => run.place!) : (model?.def.places ?? []);
  const shown = findingTexts.claimFact.or([...new Set(places)]);
  if (serial && runs.length > 0)
    return {
      places,
      known: runs.slice(0, 2).map((run) => knownRun(run, auditCase)),
      agrees: (quote) => texts.serialAgrees(quote, serial.claim.quote, shown),
      disproved: (quote) => texts.serial(quote, serial.claim.quote, shown),
    };
  const label = model?.label ?? '';
  const source = model ? sourceOf(knowledge, model.pack, model.def.source) : null;
  return {
    places,
    known: model ? [{ pack: model.pack, entry: model.id, text: texts.known(label, shown), source }] : [],
    agrees: (quote) => texts.agrees(quote, label, shown),
    disproved: (quote) => texts.disproved(quote, label, shown),
  };
}
