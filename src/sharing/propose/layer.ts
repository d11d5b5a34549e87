import type { Pack } from '../../pack/schema/index';
import type { ChangeAnswer } from './answer';
import { type Applied, applyChanges } from './apply-changes';
import { type Change, type Misfit, slotOf } from './changes';
import { diffPacks } from './diff-packs';
import { sameJson } from './json';
import { proposable } from './proposal';

/*
 * Promises: what a user has changed for themselves lies in a layer of its own over one pack, never in the pack. With a
 * new edition each change is looked at again: what the edition has taken up leaves the layer, what still fits stays, and
 * what the edition says otherwise about stays too and is told, with both sides, until the user decides. Nothing leaves
 * the layer without being named.
 */

export interface Layer {
  layer: 1;
  /** The pack's id; the edition on which the changes were made or last looked at. */
  pack: string;
  base: { edition: number; hash: string };
  changes: readonly Change[];
}

/** An edition of a pack, by its content. */
export interface BaseEdition {
  pack: Pack;
  hash: string;
}

/** The layer that makes the one pack look like the other: what the user has edited in all. */
export function layerOf(base: BaseEdition, edited: Pack): Layer {
  const { id, edition } = base.pack.about;
  return {
    ...{ layer: 1, pack: id, base: { edition, hash: base.hash } },
    changes: proposable(diffPacks(base.pack, edited)),
  };
}

/** The pack as the user sees it, and which of their changes don't fit it any more. */
export function withLayer(pack: Pack, layer: Layer): Applied {
  return applyChanges(pack, layer.pack === pack.about.id ? layer.changes : []);
}

export interface CarriedOver {
  layer: Layer;
  /** Changes that the edition holds: they have left the layer. */
  cameBack: Change[];
  /** Changes that the edition holds as the keeper edited them: they have left the layer too. */
  cameBackEdited: { change: Change; answer: ChangeAnswer }[];
  /** Still in the layer: the keeper declined them. */
  declined: { change: Change; answer: ChangeAnswer }[];
  /** Still in the layer, and not shown over the pack: the edition says something else. */
  clashes: Misfit[];
}

/** Carries a layer over to another edition of its pack. @param answers of the keeper, as far as they have come */
export function carryOver(layer: Layer, edition: BaseEdition, answers: readonly ChangeAnswer[] = []): CarriedOver {
  const { misfits, already } = withLayer(edition.pack, layer);
  const answered = new Map(answers.map((answer) => [answer.slot, answer]));
  const clashing = new Map(misfits.map((misfit) => [misfit.change, misfit]));
  const back = new Set(already);
  const over: CarriedOver = {
    ...{ layer, cameBack: [], cameBackEdited: [], declined: [], clashes: [] },
  };
  const staying = layer.changes.filter((change) => {
    const answer = answered.get(slotOf(change));
    const misfit = clashing.get(change);
    // A place can't be told from the list alone once others have put entries beside it: the keeper's word is enough.
    if (back.has(change) || (change.do === 'move' && answer?.outcome === 'accepted')) {
      over.cameBack.push(change);
      return false;
    }
    if (answer?.outcome === 'edited' && misfit && sameJson(misfit.here, answer.now)) {
      over.cameBackEdited.push({ change, answer });
      return false;
    }
    if (answer?.outcome === 'declined') over.declined.push({ change, answer });
    if (misfit) over.clashes.push(misfit);
    return true;
  });
  const { id, edition: number } = edition.pack.about;
  over.layer = { ...layer, pack: id, base: { edition: number, hash: edition.hash }, changes: staying };
  return over;
}

/** What the user decides about a clash: their own change, now over what the edition says, or the edition's word. */
export function settleClash(layer: Layer, clash: Misfit, keep: 'mine' | 'edition'): Layer {
  const changes = layer.changes.flatMap((change): Change[] => {
    if (slotOf(change) !== slotOf(clash.change)) return [change];
    return keep === 'mine' ? rebased(change, clash) : [];
  });
  return { ...layer, changes };
}

/** The change as it is over what stands there now. An entry that is gone comes back by no change of one field. */
export function rebased(change: Change, { here, reason }: Pick<Misfit, 'here' | 'reason'>): Change[] {
  if (change.do === 'change') {
    if (reason === 'no-entry') return [];
    const { was: _, ...rest } = change;
    return [here === undefined ? rest : { ...rest, was: here }];
  }
  if (change.do === 'remove') return [{ ...change, was: here as typeof change.was }];
  // Another entry of that name: the user's takes its place.
  if (change.do === 'add' && here !== undefined)
    return [{ do: 'remove', part: change.part, entry: change.entry, was: here as typeof change.value }, change];
  return [change];
}
