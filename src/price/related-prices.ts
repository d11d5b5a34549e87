import type { Knowledge, ModelKnown } from '../pack/knowledge';
import type { Observation } from './observation';

/** A price with where it is on record. */
export interface OnRecord {
  seen: Observation;
  /** The pack and entry that has it, or null for the user's own. */
  pack: { id: string; entry: string; source: string | null } | null;
  /** The thing itself; a model of the type in question; a model of the same family or type. */
  of: 'same' | 'member' | 'sister';
}

/**
 * Every price on record that may tell something of a model: its own, those of the models of a type, and those of its
 * sisters. The packs' first, then the user's own.
 * @param models the same model in each pack that has it
 */
export function relatedPrices(
  models: readonly ModelKnown[],
  knowledge: Knowledge,
  own: readonly Observation[],
): OnRecord[] {
  const relation = relationTo(models, knowledge);
  const found: OnRecord[] = [];
  for (const [ref, prices] of knowledge.prices) {
    const of = relation(ref);
    if (!of) continue;
    for (const { pack, entry, def, source } of prices)
      found.push({ seen: { ...def, model: ref }, pack: { id: pack, entry, source }, of });
  }
  for (const seen of own) {
    const of = relation(seen.model);
    if (of) found.push({ seen, pack: null, of });
  }
  return found;
}

function relationTo(models: readonly ModelKnown[], knowledge: Knowledge): (ref: string) => OnRecord['of'] | null {
  const refs = new Set(models.map(({ ref }) => ref));
  const families = new Set(models.flatMap(({ family }) => (family ? [family.ref] : [])));
  const types = new Set(models.flatMap((model) => typeOf(model)));
  const known = new Map<string, OnRecord['of'] | null>();
  const relation = (ref: string): OnRecord['of'] | null => {
    if (refs.has(ref)) return 'same';
    const other = knowledge.models.get(ref);
    if (!other) return null;
    if (typeOf(other).some((type) => refs.has(type))) return 'member';
    const isSister = (other.family && families.has(other.family.ref)) || typeOf(other).some((type) => types.has(type));
    return isSister ? 'sister' : null;
  };
  return (ref) => {
    if (!known.has(ref)) known.set(ref, relation(ref));
    return known.get(ref)!;
  };
}

/** The ref of its brand-free type, in full. */
function typeOf({ def, pack }: ModelKnown): string[] {
  if (def.type === undefined) return [];
  return [def.type.includes('/') ? def.type : `${pack}/${def.type}`];
}
