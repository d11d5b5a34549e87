import type { ModelKnown } from '../pack/knowledge';
import { ofAnother } from './other-thing';
import { type ClauseRange, clauseAt, clauseIndexAt, type TextPart, tokenAt } from './part-text';
import type { NameClaim } from './reading';
import { type Named, type Topic, topicsOf } from './topic';
import { turnsBack } from './turns-back';
import type { Stanced } from './types';

/**
 * Sentences that speak of another machine: they name a model that isn't the one on sale ("the Name, which has a
 * vibrating shuttle"), bring up somebody else's, or go on about it. What they say of features is said of that other
 * one, but for a clause that turns back to this thing ("unlike the Name, this one …").
 */
export class OtherModels {
  readonly #topics = new Map<TextPart, Map<number, Topic>>();
  /** By its first token: a clause that names other models only, with where the first of them stands. */
  readonly #foreign = new Map<TextPart, Map<number, number>>();

  constructor(parts: readonly TextPart[], names: readonly NameClaim[], claimed: readonly ModelKnown[]) {
    const own = new Set(claimed.map((model) => model.ref));
    if (own.size === 0) return;
    for (const part of parts) {
      if (part.field === 'title') continue;
      this.#topics.set(part, topicsOf(part, namedIn(part, names, own)));
      this.#foreign.set(part, foreignClauses(part, names, own));
    }
  }

  /** The claim, with its subject turned to "other" where its sentence speaks of another machine. */
  weigh<C extends Stanced>(claim: C, part: TextPart): C {
    const clause = clauseAt(part, tokenAt(part, claim.start));
    if (!clause || claim.subject === 'other') return claim;
    const foreign = this.#foreign.get(part)?.get(clause.first);
    if (foreign !== undefined && foreign < claim.start) return ofAnother(claim, 'other-model');
    const topic = this.#topics.get(part)?.get(clause.sentence);
    if (!topic) return claim;
    // Where it goes on, "it" is the other one.
    return topic !== 'goes-on' && turnsBack(part, clause) ? claim : ofAnother(claim, 'other-model');
  }
}

/** Sentence -> does it name the model on sale, does it name others? */
function namedIn(part: TextPart, names: readonly NameClaim[], own: ReadonlySet<string>): Map<number, Named> {
  const named = new Map<number, Named>();
  for (const name of names) {
    if (name.field !== part.field || !('model' in name.of)) continue;
    const clause = clauseAt(part, tokenAt(part, name.start));
    if (!clause || endsCompared(part, clause, name)) continue;
    const there = named.get(clause.sentence) ?? { own: false, other: false, opens: false };
    if (own.has(name.of.model.ref)) there.own = true;
    else {
      there.other = true;
      there.opens ||= opensSentence(part, clause, tokenAt(part, name.start));
    }
    named.set(clause.sentence, there);
  }
  return named;
}

/** A comparison's trigger, as written. */
const COMPARES = /(?:than|als|que|same as)(?: \S+)?$/i;

/** "…, lighter than my Name." at a sentence's end: what it says before is said of this one. */
function endsCompared(part: TextPart, clause: ClauseRange, { stance, trigger }: NameClaim): boolean {
  const next = part.clauses[clauseIndexAt(part, clause.first) + 1];
  return stance === 'likens' && COMPARES.test(trigger ?? '') && next?.sentence !== clause.sentence;
}

/** "… , the Name with zigzag to my cousin, and what is left is …": of clauses in one sentence each may have its own. */
function foreignClauses(part: TextPart, names: readonly NameClaim[], own: ReadonlySet<string>): Map<number, number> {
  const found = new Map<number, number>();
  const ownAt = new Set<number>();
  for (const { field, of, start, stance, trigger } of names) {
    if (field !== part.field || !('model' in of)) continue;
    const clause = clauseAt(part, tokenAt(part, start));
    if (!clause) continue;
    if (own.has(of.model.ref)) ownAt.add(clause.first);
    // "Not a Name but …" goes on about this thing.
    // "Heavier than my Name with free arm".
    else if (stance === 'says' || stance === 'guesses' || (stance === 'likens' && COMPARES.test(trigger ?? '')))
      found.set(clause.first, Math.min(start, found.get(clause.first) ?? start));
  }
  for (const first of ownAt) found.delete(first);
  for (const [first, start] of [...found])
    for (const one of [
      ...bracketsBehind(part, first),
      ...rowsBehind(part, first, found, ownAt),
      ...itsBehind(part, first),
    ])
      found.set(one, start);
  return found;
}

/** "Lighter than the Name (14 kg, cast iron)": what stands in brackets right behind is said of that one. */
function bracketsBehind(part: TextPart, first: number): number[] {
  const out: number[] = [];
  for (let at = clauseIndexAt(part, first) + 1; at < part.clauses.length && out.length < OPENS_WITHIN; at++) {
    const clause = part.clauses[at]!;
    const opens = [part.tokens[clause.first], part.tokens[clause.first - 1]].some((one) => one?.folded === '(');
    if (out.length === 0 && !opens) break;
    out.push(clause.first);
    if ([...clause.tokens, part.tokens[clause.last + 1]].some((one) => one?.folded === ')')) break;
  }
  return out;
}

/** "Name = iron, zigzag": what follows in the sentence, up to the next name. */
function rowsBehind(
  part: TextPart,
  first: number,
  found: ReadonlyMap<number, number>,
  ownAt: ReadonlySet<number>,
): number[] {
  const at = clauseIndexAt(part, first);
  const clause = part.clauses[at]!;
  const out: number[] = [];
  if (!clause.tokens.some(({ folded }) => folded === '=')) return out;
  for (let i = at + 1; i < part.clauses.length && out.length < MOST_ROWS; i++) {
    const next = part.clauses[i]!;
    if (next.sentence !== clause.sentence || found.has(next.first) || ownAt.has(next.first)) break;
    out.push(next.first);
  }
  return out;
}

/** "A leaflet shows it beside the Name, with its front bobbin", "I keep the Name, which is alloy": of the one just named. */
function itsBehind(part: TextPart, first: number): number[] {
  const at = clauseIndexAt(part, first);
  const [clause, next] = part.clauses.slice(at, at + 2);
  if (!next || next.sentence !== clause!.sentence) return [];
  const [word, its] = next.tokens.filter(({ kind }) => kind === 'word').map(({ folded }) => folded);
  return (word === 'with' && /^(?:its|their)$/.test(its ?? '')) || (word === 'which' && IS.test(its ?? ''))
    ? [next.first]
    : [];
}

const IS = /^(?:is|was|has|had|takes|took|weighs|uses|does|sews|needs)$/;
const MOST_ROWS = 6;
const OPENS_WITHIN = 3;

function opensSentence(part: TextPart, clause: ClauseRange, token: number): boolean {
  const before = part.clauses[clauseIndexAt(part, clause.first) - 1];
  if (before?.sentence === clause.sentence) return false;
  let words = 0;
  for (let i = clause.first; i < token && words <= OPENS_WITHIN; i++) if (part.tokens[i]!.kind === 'word') words++;
  return words <= OPENS_WITHIN;
}
