import type { ModelKnown } from '../pack/knowledge';
import { BELIEF } from './assumptions';
import type { Field } from './field';
import { makerOf } from './serial-likelihood';

/**
 * For what a seller takes the thing, given what it is: P(taken for B | it is M), as a few rates of its own for each M
 * and even shares over groups, so that thousands of models need no table of all pairs.
 */
export interface Beliefs {
  /** The seller knows no model's name. */
  vague: Float64Array;
  /** He takes it for what it is. */
  right: Float64Array;
  /** For M: models by their position that it is taken for, at which rate. */
  rates: readonly (readonly { taken: number; rate: number }[])[];
  /** For M: its group, with the rate that each member of it but M is taken for. -1: none. */
  group: Int32Array;
  groupRate: Float64Array;
  groups: readonly (readonly number[])[];
  /** For M: the rate that each model but M is taken for. */
  anyRate: Float64Array;
  /** Positions of all that a seller can name: models of makers, not types. */
  nameable: readonly number[];
}

const kept = new WeakMap<Field, Beliefs>();

export function beliefsOf(field: Field): Beliefs {
  const there = kept.get(field);
  if (there) return there;
  const made = beliefs(field);
  kept.set(field, made);
  return made;
}

function beliefs(field: Field): Beliefs {
  const { hypotheses } = field;
  const count = hypotheses.length;
  const nameable = hypotheses.flatMap(({ model }, i) => (model && !model.isType ? [i] : []));
  const groups = new Groups();
  const groupOf = (model: ModelKnown): number =>
    groups.position(model.family?.ref ?? `${model.pack} ${makerOf(model)?.toLowerCase() ?? ''}`);
  const out = {
    vague: new Float64Array(count),
    right: new Float64Array(count),
    rates: hypotheses.map(({ model }) => (model && !model.isType ? stated(model, field) : [])),
    group: new Int32Array(count).fill(-1),
    groupRate: new Float64Array(count),
    anyRate: new Float64Array(count),
    nameable,
  };
  for (const i of nameable) {
    const { model } = hypotheses[i]!;
    groups.add(groupOf(model!), i);
    const type = field.positionOf(model!.def.type, model!.pack);
    if (type !== undefined) groups.add(groups.position(`type ${type}`), i);
  }
  hypotheses.forEach(({ model }, i) => {
    const isNameable = model !== null && !model.isType;
    const key = isNameable ? groupOf(model) : model ? groups.position(`type ${i}`) : -1;
    const others = (groups.members[key]?.length ?? 0) - Number(isNameable);
    const anyOthers = nameable.length - Number(isNameable);
    const inGroup = isNameable ? BELIEF.sister : model ? BELIEF.passedOff : 0;
    const anywhere = isNameable ? BELIEF.any : model ? BELIEF.any : BELIEF.passedOff;
    if (others > 0) {
      out.group[i] = key;
      out.groupRate[i] = inGroup / others;
    }
    if (anyOthers > 0) out.anyRate[i] = (anywhere + (others > 0 ? 0 : inGroup)) / anyOthers;
    const strayed =
      out.rates[i]!.reduce((sum, one) => sum + one.rate, 0) +
      out.groupRate[i]! * Math.max(0, others) +
      out.anyRate[i]! * Math.max(0, anyOthers);
    out.vague[i] = isNameable ? BELIEF.vague * (1 - strayed) : 1 - strayed;
    out.right[i] = isNameable ? (1 - BELIEF.vague) * (1 - strayed) : 0;
  });
  return { ...out, groups: groups.members };
}

/** The rates that the pack states, together no more than what leaves the seller usually right. */
function stated(model: ModelKnown, field: Field): { taken: number; rate: number }[] {
  const own = field.positionOf(model.ref, model.pack);
  const found = (model.def.mistakenFor ?? []).flatMap(({ model: ref, rate }) => {
    const taken = field.positionOf(ref, model.pack);
    return taken === undefined || taken === own ? [] : [{ taken, rate }];
  });
  const sum = found.reduce((total, one) => total + one.rate, 0);
  const scale = sum > BELIEF.mistakenMost ? BELIEF.mistakenMost / sum : 1;
  return found.map(({ taken, rate }) => ({ taken, rate: rate * scale }));
}

class Groups {
  readonly members: number[][] = [];
  readonly #positions = new Map<string, number>();

  position(key: string): number {
    const there = this.#positions.get(key);
    if (there !== undefined) return there;
    this.#positions.set(key, this.members.length);
    this.members.push([]);
    return this.members.length - 1;
  }

  add(group: number, member: number): void {
    this.members[group]!.push(member);
  }
}
