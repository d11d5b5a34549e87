import type { Outline } from '../pack/schema/about';
import { fold } from '../text/fold';
import type { PackCard } from './pack-card';

/** A kind of thing that packs which are on can ask about. */
export interface AskedThing {
  /** The id of the pack that asks. */
  pack: string;
  /** "old domestic sewing machine" */
  label: string;
  /** The word that stands for it in what is audited. */
  word: string;
  outline: Outline | null;
  /** Reference of the attribute that is asked about first, or null. */
  first: string | null;
}

/** What can be asked about, in the order of the shelf. */
export function askedThings(shelf: readonly PackCard[]): AskedThing[] {
  return shelf.flatMap(({ id, on, about }) => {
    if (!on || !about?.asks) return [];
    const { thing, word, outline, first } = about;
    return [{ pack: id, label: thing, word, outline, first }];
  });
}

/** The thing that is asked about: the one that was chosen while it is there, else the only one there is. */
export function chosenThing(things: readonly AskedThing[], chosen: string | null): AskedThing | null {
  return things.find(({ pack }) => pack === chosen) ?? (things.length === 1 ? (things[0] ?? null) : null);
}

/** The one thing whose word stands in a text; null where none does, or those of several do. */
export function thingIn(text: string, things: readonly AskedThing[]): AskedThing | null {
  const plain = fold(text).text;
  const meant = things.filter(({ word }) => plain.includes(fold(word).text));
  return meant.length === 1 ? (meant[0] ?? null) : null;
}
