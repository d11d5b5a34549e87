import type { AttributeKnown, Knowledge } from '../pack/knowledge';

/** An attribute by its reference, or by its bare id. */
export function attributeKnown(knowledge: Knowledge, name: string): AttributeKnown | undefined {
  return knowledge.attributes.get(name) ?? [...knowledge.attributes.values()].find(({ id }) => id === name);
}
