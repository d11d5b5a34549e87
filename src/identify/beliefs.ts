import type { ModelKnown } from '../pack/knowledge';
import { BELIEF } from './assumptions';
import { type Field, makerOf } from './field';

/**
 * For what a seller takes the thing, given what it is: P(taken for B | it is M). A few rates of its own for each M, and
 * rates over groups that are shared out by how common each B is, so that thousands of models need no table of all
 * pairs. A machine of an unknown maker is sold under a known name so often that of all that bear a name a stated share
 * is something else: mostly machines of that model's own type.
 */
export interface Beliefs {
  /** The seller knows no model's name. */
  vague: Float64Array;
  /** He takes it for what it is. */
  right: Float64Array;
  /** For M: positions that it is taken for, at which rate. */
  rates: readonly (readonly { taken: number; rate: number }[])[];
  /** For M: its group, or -1; and the rate per weight of a member other than M. */
  group: Int32Array;
  groupRate: Float64Array;
  groups: readonly (readonly number[])[];
  /** For M: the rate per weight of any model other than M. */
  anyRate: Float64Array;
  /** How common each is: 0 for what can't be named (types and "none"). */
  weight: Float64Array;
  /** Positions of all that a seller can name: models of makers, not types. */
  nameable: readonly number[];
}

const kept = new WeakMap<Field, Beliefs>();

/** Made once for a field: it takes long and doesn't change. */
export function beliefsOf(field: Field): Beliefs {
  const there = kept.get(field);
  if (there) return there;
  const made = beliefs(field);
  kept.set(field, made);
  return made;
}

function beliefs(field: Field): Beliefs {
  const { hypotheses, logPrior } = field;
  const count = hypotheses.length;
  const groups = new Groups();
  const kinOf = (model: ModelKnown): number =>
    groups.position(model.family?.ref ?? `${model.pack} ${makerOf(model)?.toLowerCase() ?? ''}`);
  const nameable = hypotheses.flatMap(({ model }, i) => (model && !model.isType ? [i] : []));
  const weight = new Float64Array(count);
  for (const i of nameable) {
    const model = hypotheses[i]!.model!;
    weight[i] = Math.exp(logPrior[i]!);
    groups.add(kinOf(model), i, weight[i]!);
    const type = field.positionOf(model.def.type, model.pack);
    if (type !== undefined) groups.add(groups.position(`type ${type}`), i, weight[i]!);
  }
  const all = nameable.reduce((sum, i) => sum + weight[i]!, 0);
  const out = {
    vague: new Float64Array(count),
    right: new Float64Array(count),
    rates: hypotheses.map(({ model }) => (model && !model.isType ? stated(model, field) : [])),
    group: new Int32Array(count).fill(-1),
    groupRate: new Float64Array(count),
    anyRate: new Float64Array(count),
  };
  hypotheses.forEach(({ model }, i) => {
    const isNameable = weight[i]! > 0;
    const group = isNameable ? kinOf(model!) : model ? groups.position(`type ${i}`) : -1;
    const kin = group < 0 ? 0 : groups.weights[group]! - weight[i]!;
    const others = all - weight[i]!;
    const { sister, any, passedOff, alike } = BELIEF;
    if (isNameable) {
      out.groupRate[i] = kin > 0 ? sister / kin : 0;
      out.anyRate[i] = others > 0 ? any / others : 0;
    } else {
      const own = Math.exp(logPrior[i]!);
      out.groupRate[i] = passedOff * alike * Math.min(1 / own, kin > 0 ? BELIEF.mistakenMost / kin : 0);
      out.anyRate[i] = passedOff * (1 - alike);
    }
    if (kin > 0) out.group[i] = group;
    const strayed =
      out.rates[i]!.reduce((sum, one) => sum + one.rate, 0) + out.groupRate[i]! * kin + out.anyRate[i]! * others;
    out.vague[i] = (isNameable ? BELIEF.vague : 1) * (1 - strayed);
    out.right[i] = isNameable ? (1 - BELIEF.vague) * (1 - strayed) : 0;
  });
  return { ...out, groups: groups.members, weight, nameable };
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
  readonly weights: number[] = [];
  readonly #positions = new Map<string, number>();

  position(key: string): number {
    const there = this.#positions.get(key);
    if (there !== undefined) return there;
    this.#positions.set(key, this.members.length);
    this.members.push([]);
    this.weights.push(0);
    return this.members.length - 1;
  }

  add(group: number, member: number, weight: number): void {
    this.members[group]!.push(member);
    this.weights[group]! += weight;
  }
}
