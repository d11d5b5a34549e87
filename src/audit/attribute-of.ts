import type { AttributeKnown, Knowledge } from '../pack/knowledge';

/** A wording's attribute: of its own pack, or of the one it extends. */
export function attributeOf(ref: string, pack: string, knowledge: Knowledge): AttributeKnown | undefined {
  if (ref.includes('/')) return knowledge.attributes.get(ref);
  const base = knowledge.packs.find((one) => one.id === pack)?.about.extends;
  return knowledge.attributes.get(`${pack}/${ref}`) ?? (base ? knowledge.attributes.get(`${base}/${ref}`) : undefined);
}
