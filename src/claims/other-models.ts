import type { ModelKnown } from '../pack/knowledge';
import { ofAnother } from './other-thing';
import { clauseAt, type TextPart, tokenAt } from './part-text';
import type { NameClaim } from './reading';
import { type Topic, topicsOf } from './topic';
import { turnsBack } from './turns-back';
import type { Stanced } from './types';

/**
 * Sentences that speak of another machine: they name a model that isn't the one on sale ("the Name, which has a
 * vibrating shuttle"), bring up somebody else's, or go on about it. What they say of features is said of that other
 * one, but for a clause that turns back to this thing ("unlike the Name, this one …").
 */
export class OtherModels {
  readonly #topics = new Map<TextPart, Map<number, Topic>>();

  constructor(parts: readonly TextPart[], names: readonly NameClaim[], claimed: readonly ModelKnown[]) {
    const own = new Set(claimed.map((model) => model.ref));
    if (own.size === 0) return;
    for (const part of parts) {
      if (part.field !== 'title') this.#topics.set(part, topicsOf(part, namedIn(part, names, own)));
    }
  }

  /** The claim, with its subject turned to "other" where its sentence speaks of another machine. */
  weigh<C extends Stanced>(claim: C, part: TextPart): C {
    const clause = clauseAt(part, tokenAt(part, claim.start));
    const topic = clause && this.#topics.get(part)?.get(clause.sentence);
    if (!clause || !topic || claim.subject === 'other') return claim;
    // Where it goes on, "it" is the other one.
    return topic === 'brings-up' && turnsBack(part, clause) ? claim : ofAnother(claim, 'other-model');
  }
}

/** Sentence -> does it name the model on sale, does it name others? */
function namedIn(part: TextPart, names: readonly NameClaim[], own: ReadonlySet<string>) {
  const named = new Map<number, { own: boolean; other: boolean }>();
  for (const name of names) {
    if (name.field !== part.field || !('model' in name.of)) continue;
    const clause = clauseAt(part, tokenAt(part, name.start));
    if (!clause) continue;
    const there = named.get(clause.sentence) ?? { own: false, other: false };
    if (own.has(name.of.model.ref)) there.own = true;
    else there.other = true;
    named.set(clause.sentence, there);
  }
  return named;
}
