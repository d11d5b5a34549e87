import { clauseAt, tokenAt } from '../../claims/part-text';
import type { NameClaim, Reading, ValueClaim } from '../../claims/reading';
import type { Quote } from '../../claims/types';
import { judge } from '../../identify/judge';
import type { ModelKnown } from '../../pack/knowledge';
import { askTexts } from '../../text/catalogue/asks';
import { findingTexts } from '../../text/catalogue/findings';
import { fold } from '../../text/fold';
import type { AuditCase } from '../case';
import { sourceOf } from '../source-of';
import type { Finding } from '../types';
import { allowedText, askOf, knownFact, modelsText, saidEach, say } from '../words';

const texts = findingTexts.fits;

/**
 * An advert for a part that names what it fits: what it says of itself ("class 15 bobbin") against what those models
 * take, and the models that the packs know it to fit.
 */
export function fits(auditCase: AuditCase): Finding[] {
  const { reading } = auditCase;
  if (reading.kind !== 'part') return [];
  const named = reading.names.filter(
    (name) => 'model' in name.of && name.stance !== 'denies' && name.stance !== 'quotes' && isFitted(name),
  );
  const features = ownFeatures(reading);
  return distinct(named).flatMap(({ name, model }) => {
    const decided = byFeature(auditCase, features, name, model);
    // The list of what fits adds nothing where the feature has decided.
    return decided.length > 0 ? decided : byList(auditCase, name, model);
  });
}

/** In a title every name is of what it fits; in a text those behind "for", "fits" are, not each that is spoken of. */
function isFitted(name: NameClaim): boolean {
  return (
    name.field !== 'description' ||
    /^(?:fit|suit|for|to fit|also for|will|should|compatible|work|pass|fur|geeignet|pour|conv|adapt|va )/.test(
      fold(name.trigger ?? '').text,
    )
  );
}

/** What the advert says of the part itself: not in a sentence about what it doesn't fit. Once for each feature. */
function ownFeatures({ values, names, parts }: Reading): ValueClaim[] {
  const sentenceOf = (claim: Quote): string => {
    const part = parts.find((one) => one.field === claim.field);
    return part ? `${claim.field} ${clauseAt(part, tokenAt(part, claim.start))?.sentence}` : claim.field;
  };
  const foreign = new Set(names.filter((name) => name.stance === 'denies').map(sentenceOf));
  const seen = new Set<string>();
  return values.filter((claim) => {
    const key = `${claim.attribute.ref} ${String(claim.value)}`;
    const isNew = !seen.has(key) && !foreign.has(sentenceOf(claim));
    if (isNew) seen.add(key);
    return isNew;
  });
}

function distinct(names: readonly NameClaim[]): { name: NameClaim; model: ModelKnown }[] {
  const seen = new Map<ModelKnown, NameClaim>();
  for (const name of names) if ('model' in name.of && !seen.has(name.of.model)) seen.set(name.of.model, name);
  return [...seen].map(([model, name]) => ({ name, model }));
}

/** What must be the same in a part and the model it fits: the pack marks such attributes. */
function byFeature(auditCase: AuditCase, values: readonly ValueClaim[], name: NameClaim, model: ModelKnown): Finding[] {
  return values
    .filter((claim) => claim.stance === 'says' && isOfPart(claim, values) && claim.attribute.def.fitting)
    .flatMap((claim) => {
      const facts = (model.facts.get(claim.attribute.ref) ?? []).filter((fact) => fact.always);
      if (facts.length === 0 || facts.some((fact) => fact.when !== null)) return [];
      const allowed =
        typeof claim.value === 'boolean'
          ? ({ kind: 'yes-no', value: claim.value } as const)
          : ({ kind: 'values', values: new Set([claim.value]) } as const);
      const verdict = judge({ allowed, denied: false }, claim.attribute, facts);
      if (verdict === 'open') return [];
      const refuted = verdict === 'refutes';
      return [
        {
          id: `fits:${model.ref}:${claim.attribute.ref}:${String(claim.value)}`,
          check: 'fits',
          standing: refuted ? 'disproved' : 'agrees',
          attribute: claim.attribute.id,
          said: saidEach([claim, name]),
          known: facts.slice(0, 2).flatMap((fact) => knownFact(model, fact, auditCase.knowledge)),
          text: refuted
            ? texts.disproved(
                claim.quote,
                model.label,
                say(claim.attribute.def.label),
                allowedText(claim.attribute, facts[0]!.allowed),
              )
            : texts.agrees(claim.quote, model.label),
          ask: refuted ? askOf(askTexts.part, auditCase) : null,
        } satisfies Finding,
      ];
    });
}

/**
 * "Low shank walking foot", "pack of 15 class 15 bobbins": of the part named beside it, which is what is on sale. An
 * adapter from low to high shank is of neither.
 */
function isOfPart({ subject, why, attribute, value }: ValueClaim, all: readonly ValueClaim[]): boolean {
  if (all.some((one) => one.stance === 'says' && one.attribute === attribute && one.value !== value)) return false;
  const turned = why?.filter(({ makes }) => makes === 'other') ?? [];
  return subject === 'this' || turned.every(({ rule, word }) => rule === 'part' || (rule === 'frame' && word === 'of'));
}

/** Parts that packs list by name as fitting some models: a model that isn't among them is a question. */
function byList(auditCase: AuditCase, name: NameClaim, model: ModelKnown): Finding[] {
  const { reading, knowledge } = auditCase;
  const found = reading.fitting.filter((fit) => fit.model.pack === model.pack);
  const first = found[0];
  if (!first) return [];
  const own = found.find((fit) => fit.model === model);
  const label = (fit: typeof first): string => {
    const entry = fit.model.def.fits?.find((one) => one.id === fit.part);
    return entry ? say(entry.label) : fit.part;
  };
  const shown = own ? [own] : found.slice(0, 3);
  return [
    {
      id: `fits:${model.ref}:${first.part}`,
      check: 'fits',
      standing: own ? 'agrees' : 'unproved',
      attribute: null,
      said: saidEach([first, name]),
      known: shown.map((fit) => ({
        pack: fit.model.pack,
        entry: fit.model.id,
        text: texts.knownFit(fit.model.label, label(fit)),
        source: sourceOf(
          knowledge,
          fit.model.pack,
          fit.model.def.fits?.find((one) => one.id === fit.part)?.source ?? fit.model.def.source,
        ),
      })),
      text: own
        ? texts.agrees(first.quote, model.label)
        : texts.unproved(
            first.quote,
            model.label,
            modelsText([...new Set(found.map((fit) => fit.model.ref))], knowledge),
          ),
      ask: own ? null : askOf(askTexts.part, auditCase),
    },
  ];
}
