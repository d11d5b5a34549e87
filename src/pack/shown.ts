/** Controls, what turns the reading direction, line and paragraph separators, and all that takes no room. */
const UNSEEN = /[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Default_Ignorable_Code_Point}]/gu;
const LONGEST = 60;

/**
 * A text or a number of a pack as an issue shows it: in quotes, cut at 60 characters, and with everything that can't
 * be seen as its escape, so that a hostile pack can't dress up the message that refuses it.
 */
export function shown(value: string | number | boolean): string {
  if (typeof value !== 'string') return String(value);
  // Twice as many units hold as many characters; cutting by character leaves none in half.
  const characters = Array.from(value.slice(0, LONGEST * 2 + 2));
  const cut = characters.length > LONGEST ? `${characters.slice(0, LONGEST - 1).join('')}…` : value;
  return JSON.stringify(cut).replace(UNSEEN, escapeOf);
}

function escapeOf(character: string): string {
  const code = character.codePointAt(0)!.toString(16);
  return code.length > 4 ? `\\u{${code.padStart(5, '0')}}` : `\\u${code.padStart(4, '0')}`;
}
