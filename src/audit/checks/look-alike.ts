import { onSale } from '../../claims/claimed';
import { judge } from '../../identify/judge';
import type { AttributeKnown, FactKnown, ModelKnown } from '../../pack/knowledge';
import { askTexts } from '../../text/catalogue/asks';
import { findingTexts } from '../../text/catalogue/findings';
import { assertions } from '../assertions';
import type { AuditCase } from '../case';
import type { SerialCase } from '../serial-case';
import type { Finding } from '../types';
import { allowedText, askOf, knownFact, saidEach, say } from '../words';

const texts = findingTexts.lookAlike;

/**
 * A model that others are taken for: what tells them apart, unless the advert shows it already or the serial has
 * decided. One look-alike, the one most often confused.
 */
export function lookAlike(auditCase: AuditCase): Finding[] {
  const { claimed, serial, knowledge, reading } = auditCase;
  const model = claimed.find((one) => !one.isType);
  if (!model || (serial && decides(serial, model))) return [];
  const names = onSale(reading.names).filter((name) => 'model' in name.of && name.of.model === model);
  const others = mistaken(model, knowledge.models);
  for (const other of others) {
    const telling = tellingApart(model, other);
    const shown = telling.some(({ attribute, own }) =>
      assertions(auditCase).some(
        (one) =>
          one.attribute === attribute &&
          judge({ allowed: one.allowed, denied: one.denied }, attribute, [own]) !== 'open',
      ),
    );
    if (shown) continue;
    const first = telling[0];
    const text = first
      ? texts.unproved(
          model.label,
          other.label,
          say(first.attribute.def.label),
          allowedText(first.attribute, first.own.allowed),
          allowedText(first.attribute, first.theirs.allowed),
        )
      : texts.plain(model.label, other.label);
    return [
      {
        id: `look-alike:${model.ref}:${other.ref}`,
        check: 'look-alike',
        standing: 'unproved',
        attribute: first?.attribute.id ?? null,
        said: saidEach(names, 1),
        known: first ? [...knownFact(model, first.own, knowledge), ...knownFact(other, first.theirs, knowledge)] : [],
        text,
        ask: askOf(first?.attribute.def.ask ?? askTexts.notTheOther(other.label), auditCase),
      },
    ];
  }
  return [];
}

/** The number tells which model it is: as written, or all that it can be a slip for is this model's. */
function decides({ usable, verdict, suggestions }: SerialCase, model: ModelKnown): boolean {
  if (usable) return true;
  const runs = suggestions.flatMap((one) => one.runs);
  return verdict === 'misread' && runs.length > 0 && runs.every((run) => run.models.includes(model.ref));
}

/** Models that are sold as this one, or this one as them, the most frequent first. */
function mistaken(model: ModelKnown, models: ReadonlyMap<string, ModelKnown>): ModelKnown[] {
  const rates = new Map<ModelKnown, number>();
  const note = (other: ModelKnown | undefined, rate: number): void => {
    if (other && other !== model) rates.set(other, Math.max(rates.get(other) ?? 0, rate));
  };
  const full = (ref: string, pack: string): string => (ref.includes('/') ? ref : `${pack}/${ref}`);
  for (const { model: ref, rate } of model.def.mistakenFor ?? []) note(models.get(full(ref, model.pack)), rate);
  for (const other of models.values())
    for (const { model: ref, rate } of other.def.mistakenFor ?? [])
      if (full(ref, other.pack) === model.ref) note(other, rate);
  return [...rates].sort((a, b) => b[1] - a[1]).map(([other]) => other);
}

/** Attributes in which the two surely differ; those that can be seen from a photo first. */
function tellingApart(
  model: ModelKnown,
  other: ModelKnown,
): { attribute: AttributeKnown; own: FactKnown; theirs: FactKnown }[] {
  const out: { attribute: AttributeKnown; own: FactKnown; theirs: FactKnown }[] = [];
  for (const ref of model.facts.keys()) {
    const own = model.facts.get(ref)?.find((fact) => fact.when === null);
    const theirs = other.facts.get(ref)?.find((fact) => fact.when === null);
    if (!own || !theirs || !own.always || !theirs.always) continue;
    if (judge({ allowed: own.allowed, denied: false }, own.attribute, [theirs]) === 'refutes')
      out.push({ attribute: own.attribute, own, theirs });
  }
  const effort = (one: { attribute: AttributeKnown }): number =>
    ['read', 'photo', 'visit'].indexOf(one.attribute.def.effort ?? 'visit');
  return out.sort((a, b) => effort(a) - effort(b));
}
