import type { KeptLayer } from '../../keep/schema';
import { type Change, slotOf } from '../../sharing/propose/changes';
import { type Json, sameJson } from '../../sharing/propose/json';
import { type BaseEdition, carryOver } from '../../sharing/propose/layer';

/** A field that was typed anew: what the user saw there, and what should be there. */
export interface TypedChange {
  part: string;
  entry: string;
  field: readonly string[];
  /** null: nothing was there. */
  saw: Json | null;
  now: Json;
}

/** What was typed, as a change of what was seen. */
export function asChange({ part, entry, field, saw, now }: TypedChange): Change {
  return { do: 'change', part, entry, field, ...(saw === null ? {} : { was: saw }), now };
}

/**
 * The layer with one more change, or with another one of the same field; without it where the pack says the same.
 * @returns null where another window has changed the field meanwhile, so that the user has not seen what stands there
 */
export function withChange(
  layer: KeptLayer,
  { part, entry, field, saw, now }: TypedChange,
  base: KeptLayer['base'],
): KeptLayer | null {
  const mine = asChange({ part, entry, field, saw, now });
  const slot = slotOf(mine);
  const there = changesOf(layer).find((change) => slotOf(change) === slot);
  if (there?.do === 'change' && !sameJson(there.now ?? null, saw)) return null;
  // What the pack itself says stays what the change is held against.
  const was = there?.do === 'change' ? there.was : (saw ?? undefined);
  const { was: _, ...rest } = mine as Extract<Change, { do: 'change' }>;
  const others = changesOf(layer).filter((change) => change !== there);
  const isBack = sameJson(was ?? null, now);
  const changes = isBack ? others : [...others, was === undefined ? rest : { ...rest, was }];
  return {
    ...layer,
    base: layer.changes.length === 0 ? base : layer.base,
    changes: changes as unknown as KeptLayer['changes'],
  };
}

/** The layer on another edition of its pack: what the edition says as well leaves it. @returns how many those were */
export function carriedTo(layer: KeptLayer, edition: BaseEdition): { layer: KeptLayer; cameBack: number } {
  const { id, base } = layer;
  const over = carryOver({ layer: 1, pack: id, base, changes: changesOf(layer) }, edition);
  const changes = over.layer.changes as unknown as KeptLayer['changes'];
  return { layer: { id, base: over.layer.base, changes }, cameBack: over.cameBack.length };
}

/** The layer without the changes of these slots. */
export function withoutSlots(layer: KeptLayer, slots: readonly string[]): KeptLayer {
  const changes = changesOf(layer).filter((change) => !slots.includes(slotOf(change)));
  return { ...layer, changes: changes as unknown as KeptLayer['changes'] };
}

/** What is kept as changes was made by `withChange` alone. */
export function changesOf({ changes }: Pick<KeptLayer, 'changes'>): readonly Change[] {
  return changes as unknown as readonly Change[];
}
