/** The characters that windows-1252 has for the bytes 0x80 to 0x9f (WHATWG Encoding Standard, index windows-1252). */
const HIGH =
  '\u20ac\u0081\u201a\u0192\u201e\u2026\u2020\u2021\u02c6\u2030\u0160\u2039\u0152\u008d\u017d\u008f\u0090\u2018\u2019\u201c\u201d\u2022\u2013\u2014\u02dc\u2122\u0161\u203a\u0153\u009d\u017e\u0178';
/** Bytes 0x80 to 0xbf; some decoders leave those below 0xa0 as they are. */
const FOLLOWING = `[${HIGH}\u0080-\u00bf]`;
const SEQUENCE = new RegExp(
  `[\u00c2-\u00df]${FOLLOWING}|[\u00e0-\u00ef]${FOLLOWING}{2}|[\u00f0-\u00f4]${FOLLOWING}{3}`,
  'gu',
);

const byteOf = (character: string): number => {
  const high = HIGH.indexOf(character);
  return high < 0 ? character.charCodeAt(0) : 0x80 + high;
};

/**
 * A text whose UTF-8 was taken for windows-1252 somewhere on its way ("\u00c2\u00a3", "\u00e2\u20ac\u2122"), as it was meant. What is no sequence of
 * UTF-8 stays, so that text that was never broken passes unchanged: such letters hardly stand beside each other.
 */
export function wellDecoded(text: string): string {
  if (!/[\u00c2-\u00f4]/.test(text)) return text;
  // The no-break space of "\u00c3\u00a0", or one by itself ("\u00c2\u00a0"), was tidied to a space.
  let told = text;
  if (told.includes('\u00c3 ')) told = told.replace(/(?<!\p{L})\u00c3 (?=\p{Ll}|\u00c3|\u00e2\u20ac)/gu, '\u00e0 ');
  if (told.includes('\u00c2 ')) told = told.replace(/(?<!\p{L})\u00c2 |\u00c2 (?=\d)/gu, ' ');
  return told.replace(SEQUENCE, (written) => {
    const bytes = Uint8Array.from(written, byteOf);
    const meant = new TextDecoder('utf-8').decode(bytes);
    return meant.includes('\ufffd') ? written : meant;
  });
}
