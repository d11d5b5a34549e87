import { COPIES, NAMED, TRUST } from '../../../src/identify/assumptions';
import { type Beliefs, beliefsOf } from '../../../src/identify/beliefs';
import type { Field } from '../../../src/identify/field';
import type { Leaves } from '../../../src/identify/leaves';
import { makerNamed, type Simulated } from './advert';
import type { Chance } from './chance';

const MENTIONS = 0.4;
const ANSWERS = 0.3;

/** Adverts as identification itself supposes that they come about: what it then says should be right to the letter. */
export function ownModel(field: Field, chance: Chance): Simulated {
  const beliefs = beliefsOf(field);
  const truth = chance.weighted(field.logPrior.map(Math.exp));
  const taken = takenFor(beliefs, truth, chance);
  const believed = taken === null ? null : field.hypotheses[taken]!.model;
  const isCalled = believed !== null && chance.happens(NAMED.model);
  const maker = makerNamed(believed ?? field.hypotheses[truth]!.model);
  const copies = taken !== null && taken !== truth && chance.happens(COPIES);
  const advert: Simulated = {
    truth,
    model: isCalled ? believed : null,
    maker: chance.happens(NAMED.maker) ? maker : null,
    claims: [],
    serial: null,
    answers: {},
  };
  const answers: Record<string, string | boolean> = {};
  for (const [ref, leaves] of field.tables.attributes) {
    const own = leafOf(field, ref, leaves, truth, chance);
    const { seller = TRUST.seller, eye = TRUST.eye } = leaves.attribute.def.trust ?? {};
    if (chance.happens(MENTIONS)) {
      const told = copies ? leafOf(field, ref, leaves, taken, chance) : own;
      advert.claims.push({ attribute: leaves.attribute, value: toldAs(told, seller, leaves, chance) });
    }
    if (chance.happens(ANSWERS)) answers[ref] = toldAs(own, eye, leaves, chance);
  }
  return { ...advert, answers };
}

function takenFor(beliefs: Beliefs, truth: number, chance: Chance): number | null {
  const { vague, right, rates, group, groupRate, groups, anyRate, weight, nameable } = beliefs;
  const options: { taken: number | null; share: number }[] = [
    { taken: null, share: vague[truth]! },
    { taken: truth, share: right[truth]! },
    ...rates[truth]!.map(({ taken, rate }) => ({ taken, share: rate })),
    ...nameable.filter((b) => b !== truth).map((b) => ({ taken: b, share: anyRate[truth]! * weight[b]! })),
    ...(groups[group[truth]!] ?? [])
      .filter((b) => b !== truth)
      .map((b) => ({ taken: b, share: groupRate[truth]! * weight[b]! })),
  ];
  return options[chance.weighted(options.map(({ share }) => share))]!.taken;
}

/** The value that one machine of that kind has. */
export function leafOf(field: Field, ref: string, leaves: Leaves, kind: number, chance: Chance): number {
  const { of, shares } = field.tables.of(ref);
  const count = leaves.values.length;
  return chance.weighted(shares.subarray(of[kind]! * count, (of[kind]! + 1) * count));
}

/** As it is told by one who is right so often. */
export function toldAs(leaf: number, reliable: number, leaves: Leaves, chance: Chance): string | boolean {
  if (chance.happens(reliable) || leaves.values.length === 1) return leaves.values[leaf]!;
  const wrong = chance.below(leaves.values.length - 1);
  return leaves.values[wrong < leaf ? wrong : wrong + 1]!;
}
