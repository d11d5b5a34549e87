import type { LocalText } from './schema/parts';

/**
 * The text in the first wanted language that there is, else in English, else in any. Tags are compared without regard
 * to case (RFC 5646); of "de-AT", "de" will do. What a page says of its language may be anything, so only a text's own
 * keys count.
 */
export function localText(text: LocalText, ...languages: (string | null | undefined)[]): string {
  if (typeof text === 'string') return text;
  const own = new Map(Object.entries(text).map(([tag, words]) => [tag.toLowerCase(), words]));
  for (const language of [...languages, 'en']) {
    const tag = language?.toLowerCase() ?? '';
    const words = own.get(tag) ?? own.get(tag.split('-')[0] ?? '');
    if (words !== undefined) return words;
  }
  return Object.values(text)[0] ?? '';
}
