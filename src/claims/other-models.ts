import type { ModelKnown } from '../pack/knowledge';
import { ofAnother } from './other-thing';
import { clauseAt, type TextPart, tokenAt } from './part-text';
import type { NameClaim } from './reading';
import { turnsBack } from './turns-back';
import type { Stanced } from './types';

/**
 * Sentences that speak of another model: they name one, and not the one on sale ("the Name, which has a vibrating
 * shuttle"; "zigzag is what the sister does, the Name"). What they say of features is said of that other one, but for
 * a clause that turns back to this thing ("unlike the Name, this one …").
 */
export class OtherModels {
  readonly #sentences = new Map<TextPart, Set<number>>();

  constructor(parts: readonly TextPart[], names: readonly NameClaim[], claimed: readonly ModelKnown[]) {
    const own = new Set(claimed.map((model) => model.ref));
    if (own.size === 0) return;
    for (const part of parts) {
      if (part.field === 'title') continue;
      const naming = new Map<number, { own: boolean; other: boolean }>();
      for (const name of names) {
        if (name.field !== part.field || !('model' in name.of)) continue;
        const clause = clauseAt(part, tokenAt(part, name.start));
        if (!clause) continue;
        const there = naming.get(clause.sentence) ?? { own: false, other: false };
        if (own.has(name.of.model.ref)) there.own = true;
        else there.other = true;
        naming.set(clause.sentence, there);
      }
      const foreign = [...naming].filter(([, there]) => there.other && !there.own).map(([sentence]) => sentence);
      this.#sentences.set(part, new Set(foreign));
    }
  }

  /** The claim, with its subject turned to "other" where its sentence speaks of another model. */
  weigh<C extends Stanced>(claim: C, part: TextPart): C {
    const clause = clauseAt(part, tokenAt(part, claim.start));
    if (!clause || claim.subject === 'other' || !this.#sentences.get(part)?.has(clause.sentence)) return claim;
    return turnsBack(part, clause) ? claim : ofAnother(claim, 'other-model');
  }
}
