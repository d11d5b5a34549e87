/** A head that is shorter than this, in UTF-16 units, says nothing by itself. */
const SHORTEST = 12;

/**
 * What a text says first, up to its first colon, semicolon or full stop, and the rest of it, "" where that is all.
 * "Cast iron is heavy: lift it with both hands." -> "Cast iron is heavy", "Lift it with both hands."
 */
export function headOf(text: string): { head: string; rest: string } {
  for (const { index, 0: mark } of text.matchAll(/[:;.!?](?=\s)/g)) {
    if (index < SHORTEST) continue;
    const head = text.slice(0, mark === ':' || mark === ';' ? index : index + 1);
    const rest = text.slice(index + 1).trim();
    return { head, rest: rest.charAt(0).toLocaleUpperCase() + rest.slice(1) };
  }
  return { head: text, rest: '' };
}
