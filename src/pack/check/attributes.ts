import { packTexts as texts } from '../../text/catalogue/pack';
import type { ChoiceAttribute } from '../schema/attributes';
import type { Pack } from '../schema/index';
import type { Lookup } from './lookup';

/** The values of a choice name each other, and none lies within itself, however far around. */
export function checkAttributes(pack: Pack, lookup: Lookup): void {
  pack.attributes?.forEach((attribute, i) => {
    lookup.source(`attributes[${i}]`, attribute.source);
    if (attribute.kind === 'choice') checkValues(attribute, `attributes[${i}].values`, lookup);
  });
}

function checkValues(attribute: ChoiceAttribute, path: string, lookup: Lookup): void {
  const within = new Map(attribute.values.map((value) => [value.id, value.within]));
  const known = (at: string, id: string, self: string): void => {
    if (!within.has(id)) lookup.add(at, texts.what.unknown(id), texts.expected.valueOf(attribute.id));
    else if (id === self) lookup.add(at, texts.what.itself(id), texts.expected.anotherValue(attribute.id));
  };
  const round = inACircle(within);
  attribute.values.forEach((value, j) => {
    if (value.within !== undefined) known(`${path}[${j}].within`, value.within, value.id);
    value.excludes?.forEach((id, k) => {
      known(`${path}[${j}].excludes[${k}]`, id, value.id);
    });
    if (value.within !== value.id && round.has(value.id))
      lookup.add(`${path}[${j}].within`, texts.what.circle(value.id), texts.expected.noCircle);
  });
}

/** Ids from which following "within" comes back to the same id. Each id is walked once. */
function inACircle(within: ReadonlyMap<string, string | undefined>): Set<string> {
  const circle = new Set<string>();
  const walked = new Set<string>();
  for (const start of within.keys()) {
    const trail: string[] = [];
    const here = new Set<string>();
    let id: string | undefined = start;
    while (id !== undefined && !walked.has(id)) {
      walked.add(id);
      here.add(id);
      trail.push(id);
      id = within.get(id);
    }
    if (id !== undefined && here.has(id)) for (const one of trail.slice(trail.indexOf(id))) circle.add(one);
  }
  return circle;
}
