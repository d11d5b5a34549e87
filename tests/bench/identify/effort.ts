import type { Reading } from '../../../src/claims/reading';
import { EFFORT } from '../../../src/identify/assumptions';
import type { Answers } from '../../../src/identify/evidence';
import type { Field } from '../../../src/identify/field';
import { type Identified, identify } from '../../../src/identify/identify';
import { nextEvidence } from '../../../src/identify/next-evidence';
import type { Knowledge } from '../../../src/pack/knowledge';
import { askedOf, type Simulated } from './advert';
import { Chance } from './chance';
import { answerOf } from './market';

/** Which attribute to ask about next, of those not yet asked, or null for no more. */
export type Policy = (identified: Identified, answers: Answers, left: readonly string[]) => string | null;

/** Also where nothing tells much any more, so that all policies may ask for everything. */
export const byInformation: Policy = (identified, answers, left) =>
  nextEvidence(identified, answers, 1, { anyway: true })[0]?.leaves.attribute.ref ?? left[0] ?? null;
export const inOrder: Policy = (_identified, _answers, left) => left[0] ?? null;
export const atRandom =
  (chance: Chance): Policy =>
  (_identified, _answers, left) =>
    left[chance.below(left.length)] ?? null;

/** What it took to be sure of one thing. */
export interface Taken {
  effort: number;
  /** null: not sure after everything was asked. */
  right: boolean | null;
}

/** Asks one thing after the other until one is so sure. Answers are the same whatever the order of questions. */
export function effortsOf(
  adverts: readonly (Simulated & { own: ReadonlyMap<string, number> })[],
  policy: Policy,
  sure: number,
  { field, knowledge, blank }: { field: Field; knowledge: Knowledge; blank: Reading },
): Taken[] {
  return adverts.map((advert, i) => {
    const chance = new Chance(i + 1);
    const all = new Map(
      [...field.tables.attributes.keys()].map((ref) => [ref, answerOf(field, ref, advert.own, chance)]),
    );
    let answers: Answers = {};
    let effort = 0;
    for (;;) {
      const identified = identify(askedOf({ ...advert, answers }, blank), knowledge);
      const best = identified.order[0]!;
      if (identified.posterior.shares[best]! >= sure) return { effort, right: best === advert.truth };
      const left = [...all.keys()].filter((ref) => !Object.hasOwn(answers, ref));
      const next = policy(identified, answers, left);
      if (next === null) return { effort, right: null };
      effort += EFFORT[field.tables.attributes.get(next)!.attribute.def.effort ?? 'photo'];
      answers = { ...answers, [next]: all.get(next)! };
    }
  });
}
