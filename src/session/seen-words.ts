import { say, valueLabel } from '../audit/words';
import { READS_OTHERWISE, SERIAL_LOOK } from '../identify/serial-look';
import type { AttributeKnown, Knowledge } from '../pack/knowledge';
import { identifyTexts } from '../text/catalogue/identify';
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
    if (attribute === SERIAL_LOOK) return serialSeen(value);
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

/** What the number on the machine was seen to read. */
function serialSeen(value: SeenValue): SeenWords {
  const { name, other } = identifyTexts.serialLook;
  const text = value === READS_OTHERWISE ? other : typeof value === 'string' ? value : null;
  return { attribute: SERIAL_LOOK, name, value, text };
}

/** No machine's number is longer. */
const LONGEST_NUMBER = 40;

function isReading(value: SeenValue): boolean {
  return value === null || (typeof value === 'string' && value.length <= LONGEST_NUMBER);
}

/** What packs that are on can make use of: a pack that was removed since takes its attributes and values with it. */
export function usableSeen(seen: Seen, knowledge: Knowledge): Record<string, SeenValue> {
  return Object.fromEntries(
    [...seen].filter(([attribute, value]) =>
      attribute === SERIAL_LOOK ? isReading(value) : fits(attributeKnown(knowledge, attribute), value),
    ),
  );
}

function fits(known: AttributeKnown | undefined, value: SeenValue): boolean {
  if (!known) return false;
  if (value === null) return true;
  const { def } = known;
  if (def.kind === 'choice') return def.values.some(({ id }) => id === value);
  return def.kind === 'yes-no' && typeof value === 'boolean';
}
