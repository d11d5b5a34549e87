import { say, valueLabel } from '../audit/words';
import type { AttributeKnown, Knowledge } from '../pack/knowledge';
import { attributeKnown } from './attribute-known';
import type { Seen, SeenValue } from './seen';

/** One thing that was seen, in words. */
export interface SeenWords {
  attribute: string;
  /** The attribute's name: "bobbin". The reference itself where no pack that is on knows it. */
  name: string;
  value: SeenValue;
  /** The value's words; null for yes, no and can't tell, for which a catalogue has words. */
  text: string | null;
}

/** What was seen in the packs' words, in the order in which it was said. */
export function seenWords(seen: Seen, knowledge: Knowledge): SeenWords[] {
  return [...seen].map(([attribute, value]) => {
    const known = attributeKnown(knowledge, attribute);
    if (!known) return { attribute, name: attribute, value, text: typeof value === 'string' ? value : null };
    return {
      attribute,
      name: say(known.def.label),
      value,
      text: typeof value === 'string' ? valueLabel(known, value) : null,
    };
  });
}

/** What packs that are on can make use of: a pack that was removed since takes its attributes and values with it. */
export function usableSeen(seen: Seen, knowledge: Knowledge): Record<string, SeenValue> {
  return Object.fromEntries(
    [...seen].filter(([attribute, value]) => fits(attributeKnown(knowledge, attribute), value)),
  );
}

function fits(known: AttributeKnown | undefined, value: SeenValue): boolean {
  if (!known) return false;
  if (value === null) return true;
  const { def } = known;
  if (def.kind === 'choice') return def.values.some(({ id }) => id === value);
  return def.kind === 'yes-no' && typeof value === 'boolean';
}
