import type { ModelKnown } from '../pack/knowledge';
import type { AuditCase } from './case';

/** A trade has some dozens of kinds. From more than so many nothing is concluded, so that a pack can't make audits slow. */
const MOST_KINDS = 300;

/** The brand-free kinds that the thing can be of; `every` where their packs say that there are no others. */
export function kindsOf({ knowledge, reading }: AuditCase, every = false): ModelKnown[] {
  const packs = knowledge.packs.filter(
    ({ id, about }) => reading.covering.has(id) && (!every || about.covers.complete),
  );
  const from = new Set(packs.map(({ id }) => id));
  const kinds: ModelKnown[] = [];
  for (const model of knowledge.models.values()) {
    if (!model.isType || !from.has(model.pack)) continue;
    if (kinds.push(model) > MOST_KINDS) return [];
  }
  return kinds;
}
