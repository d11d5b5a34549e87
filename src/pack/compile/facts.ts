import { factList } from '../facts';
import type { Allowed, AttributeKnown, FactKnown, FamilyKnown, Knowledge, ModelKnown } from '../knowledge';
import type { Facts, FactValue, When } from '../schema/models';
import { InheritedFacts } from './inherited-facts';
import type { Scope } from './scope';

type Layer = Map<string, FactKnown[]>;

/**
 * Gives every model its facts with what it inherits. For each attribute the nearest of model, family (its necessary
 * conditions first) and type speaks alone; a variant's fact stands beside the nearest one with its condition, because
 * it holds for some years, places or numbers only.
 */
export function giveFacts(scopes: readonly Scope[], knowledge: Knowledge): void {
  const scopeOf = new Map(scopes.map((scope) => [scope.id, scope]));
  const own = new Map<ModelKnown, Layer>();
  for (const model of knowledge.models.values()) {
    const scope = scopeOf.get(model.pack);
    if (scope) own.set(model, read(model.def.facts, scope, knowledge, model.id, model.def.source));
  }
  const families = new Map<FamilyKnown, Layer[]>();
  for (const family of knowledge.families.values()) {
    const scope = scopeOf.get(family.pack);
    if (!scope) continue;
    const layers = familyLayers(family, scope, knowledge);
    families.set(family, layers);
    family.facts = new InheritedFacts(layers, new Map());
  }
  for (const [model, facts] of own) {
    const scope = scopeOf.get(model.pack)!;
    const layers = [facts, ...((model.family && families.get(model.family)) ?? [])];
    const type = model.def.type && knowledge.models.get(scope.ref(model.def.type, knowledge.models));
    const typeFacts = type && own.get(type);
    if (typeFacts) layers.push(typeFacts);
    model.facts = new InheritedFacts(layers, variantFacts(model, scope, knowledge));
  }
}

function familyLayers({ def }: FamilyKnown, scope: Scope, knowledge: Knowledge): Layer[] {
  const necessary = read(def.necessary, scope, knowledge, def.id, def.source);
  for (const list of necessary.values()) for (const fact of list) fact.necessary = true;
  return [necessary, read(def.facts, scope, knowledge, def.id, def.source)];
}

function variantFacts(model: ModelKnown, scope: Scope, knowledge: Knowledge): Layer {
  const out: Layer = new Map();
  for (const { facts, when, source } of model.def.variants ?? []) {
    for (const [ref, list] of read(facts, scope, knowledge, model.id, source ?? model.def.source, when)) {
      const there = out.get(ref);
      if (there) for (const fact of list) there.push(fact);
      else out.set(ref, list);
    }
  }
  return out;
}

function read(
  facts: Facts | undefined,
  scope: Scope,
  knowledge: Knowledge,
  entry: string,
  entrySource: string | undefined,
  variantWhen?: When,
): Layer {
  const out: Layer = new Map();
  for (const [ref, fact] of Object.entries(facts ?? {})) {
    const attribute = knowledge.attributes.get(scope.ref(ref, knowledge.attributes));
    if (!attribute) continue;
    const list = factList(fact).flatMap((one): FactKnown[] => {
      const allowed = allowedBy(one.is, attribute);
      if (!allowed) return [];
      const when = narrowed(variantWhen, one.when) ?? null;
      const source = scope.citation(one.source ?? entrySource);
      return [
        { attribute, allowed, when, always: one.holds !== 'usually', necessary: false, pack: scope.id, entry, source },
      ];
    });
    if (list.length > 0) out.set(attribute.ref, list);
  }
  return out;
}

/** A variant's condition with what a fact of it adds: both must hold. Of places and numbers the fact's are narrower. */
function narrowed(variant: When | undefined, fact: When | undefined): When | undefined {
  if (!variant || !fact) return fact ?? variant;
  if (!variant.made || !fact.made) return { ...variant, ...fact };
  const from = Math.max(variant.made.from ?? 0, fact.made.from ?? 0);
  const to = Math.min(variant.made.to ?? Number.POSITIVE_INFINITY, fact.made.to ?? Number.POSITIVE_INFINITY);
  const made = { ...(from > 0 ? { from } : {}), ...(to < Number.POSITIVE_INFINITY ? { to } : {}) };
  return { ...variant, ...fact, made };
}

/** What a fact's value allows of its attribute, or null where it isn't of the attribute's kind. */
export function allowedBy(is: FactValue, attribute: AttributeKnown): Allowed | null {
  switch (attribute.def.kind) {
    case 'choice': {
      const values = Array.isArray(is) ? is : typeof is === 'string' ? [is] : null;
      return values && { kind: 'values', values: new Set(values) };
    }
    case 'yes-no':
      return typeof is === 'boolean' ? { kind: 'yes-no', value: is } : null;
    case 'measure':
      if (typeof is === 'number') return { kind: 'range', from: is, to: is };
      if (typeof is !== 'object' || Array.isArray(is)) return null;
      return { kind: 'range', from: is.from ?? Number.NEGATIVE_INFINITY, to: is.to ?? Number.POSITIVE_INFINITY };
  }
}
