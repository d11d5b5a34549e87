import type { LocalText } from './schema/parts';

/** The text in the first wanted language that there is, else in English, else in any. */
export function localText(text: LocalText, ...languages: (string | null | undefined)[]): string {
  if (typeof text === 'string') return text;
  for (const language of [...languages, 'en']) {
    if (!language) continue;
    const whole = text[language];
    if (whole !== undefined) return whole;
    const primary = text[language.split('-')[0] ?? ''];
    if (primary !== undefined) return primary;
  }
  return Object.values(text)[0] ?? '';
}
