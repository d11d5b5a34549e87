import { factList } from '../facts';
import type { Allowed, AttributeKnown, FactKnown, Knowledge, ModelKnown } from '../knowledge';
import type { Facts, FactValue, When } from '../schema/models';
import type { Scope } from './scope';

/**
 * A model's facts with what it inherits. For each attribute the nearest of model, family (its necessary conditions
 * first) and type speaks alone; a variant's fact stands beside the nearest one with its condition, because it holds
 * for some years, places or numbers only.
 */
export function factsOf(model: ModelKnown, scopes: readonly Scope[], knowledge: Knowledge): Map<string, FactKnown[]> {
  const scope = scopes.find((one) => one.id === model.pack);
  if (!scope) return new Map();
  const out = new Map<string, FactKnown[]>();
  const inherit = (facts: Map<string, FactKnown[]>): void => {
    for (const [ref, list] of facts) if (!out.has(ref)) out.set(ref, list);
  };
  inherit(read(model.def.facts, scope, knowledge, model.id, model.def.source));
  if (model.family) {
    const of = scopes.find((one) => one.id === model.family?.pack) ?? scope;
    const { id, necessary, facts, source } = model.family.def;
    inherit(read(necessary, of, knowledge, id, source));
    inherit(read(facts, of, knowledge, id, source));
  }
  const type = model.def.type ? knowledge.models.get(scope.ref(model.def.type, knowledge.models)) : undefined;
  const typeScope = type ? scopes.find((one) => one.id === type.pack) : undefined;
  if (type && typeScope) inherit(read(type.def.facts, typeScope, knowledge, type.id, type.def.source));

  for (const variant of model.def.variants ?? []) {
    const facts = read(
      variant.facts,
      scope,
      knowledge,
      `${model.id}`,
      variant.source ?? model.def.source,
      variant.when,
    );
    for (const [ref, list] of facts) out.set(ref, [...(out.get(ref) ?? []), ...list]);
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
): Map<string, FactKnown[]> {
  const out = new Map<string, FactKnown[]>();
  for (const [ref, fact] of Object.entries(facts ?? {})) {
    const attribute = knowledge.attributes.get(scope.ref(ref, knowledge.attributes));
    if (!attribute) continue;
    const list = factList(fact).flatMap((one): FactKnown[] => {
      const allowed = allowedBy(one.is, attribute);
      if (!allowed) return [];
      const when = one.when ?? variantWhen ?? null;
      const source = scope.citation(one.source ?? entrySource);
      return [{ attribute, allowed, when, always: one.holds !== 'usually', pack: scope.id, entry, source }];
    });
    if (list.length > 0) out.set(attribute.ref, list);
  }
  return out;
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
