import { factList } from '../facts';
import type {
  Allowed,
  AttributeKnown,
  FactKnown,
  FactsByAttribute,
  FamilyKnown,
  Knowledge,
  ModelKnown,
} from '../knowledge';
import type { Facts, FactValue, When } from '../schema/models';
import { InheritedFacts } from './inherited-facts';
import type { Scope } from './scope';

type Layer = Map<string, FactKnown[]>;

/**
 * Facts of models and families with what they inherit, read when they are asked for. For each attribute the nearest of
 * model, family (its necessary conditions first) and type speaks alone; a variant's fact stands beside the nearest one
 * with its condition, because it holds for some years, places or numbers only.
 */
export class FactReader {
  readonly #own = new Map<ModelKnown, Layer>();
  readonly #families = new Map<FamilyKnown, readonly Layer[]>();
  readonly #knowledge: Knowledge;
  readonly #scopeOf: (pack: string) => Scope;

  constructor(knowledge: Knowledge, scopeOf: (pack: string) => Scope) {
    this.#knowledge = knowledge;
    this.#scopeOf = scopeOf;
  }

  ofFamily(family: FamilyKnown): FactsByAttribute {
    return new InheritedFacts(this.#familyLayers(family), new Map());
  }

  ofModel(model: ModelKnown): FactsByAttribute {
    const scope = this.#scopeOf(model.pack);
    const layers = [this.#ownLayer(model), ...(model.family ? this.#familyLayers(model.family) : [])];
    const type = model.def.type && this.#knowledge.models.get(scope.ref(model.def.type, this.#knowledge.models));
    if (type) layers.push(this.#ownLayer(type));
    return new InheritedFacts(layers, variantFacts(model, scope, this.#knowledge));
  }

  #ownLayer(model: ModelKnown): Layer {
    const there = this.#own.get(model);
    if (there) return there;
    const made = read(model.def.facts, this.#scopeOf(model.pack), this.#knowledge, model.id, model.def.source);
    this.#own.set(model, made);
    return made;
  }

  #familyLayers(family: FamilyKnown): readonly Layer[] {
    const there = this.#families.get(family);
    if (there) return there;
    const { def, pack } = family;
    const scope = this.#scopeOf(pack);
    const necessary = read(def.necessary, scope, this.#knowledge, def.id, def.source);
    for (const list of necessary.values()) for (const fact of list) fact.necessary = true;
    const made = [necessary, read(def.facts, scope, this.#knowledge, def.id, def.source)];
    this.#families.set(family, made);
    return made;
  }
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
