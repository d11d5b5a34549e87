import { compile } from '../../../../src/pack/compile';
import type { Allowed, FactKnown, Knowledge, ModelKnown } from '../../../../src/pack/knowledge';
import type { Pack } from '../../../../src/pack/schema/index';
import { accepted } from './packs';

/** Compiles packs that were read from their JSON first, as packs always are. */
export function knowing(...packs: readonly Pack[]): Knowledge {
  return compile(packs.map((pack) => accepted(pack)));
}

export function modelOf(knowledge: Knowledge, ref: string): ModelKnown {
  const model = knowledge.models.get(ref);
  if (!model) throw new Error(`no model ${ref} among ${[...knowledge.models.keys()].join(', ')}`);
  return model;
}

export function factsOf(knowledge: Knowledge, model: string, attribute: string): FactKnown[] {
  return modelOf(knowledge, model).facts.get(attribute) ?? [];
}

/** What facts allow, in short: "iron|alloy", "yes", "10..12". */
export function allowed(facts: readonly FactKnown[]): string[] {
  return facts.map((fact) => short(fact.allowed));
}

function short(is: Allowed): string {
  if (is.kind === 'values') return [...is.values].join('|');
  if (is.kind === 'yes-no') return is.value ? 'yes' : 'no';
  return `${is.from}..${is.to}`;
}
