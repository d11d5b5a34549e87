import type { Token } from '../text/tokens';
import type { TextPart } from './part-text';

/** Small words that tell a language; each belongs to one of them only. Folded: no accents. */
const TELLING: Record<string, readonly string[]> = {
  en: 'the and with this is has for are was it from of you my very not been would'.split(' '),
  de: 'und der die das ist mit nicht ein eine zu auf ich sie wird auch sehr noch aus bei sind kein'.split(' '),
  fr: "le les une est avec pas des du et elle pour dans sur tres sans cette vous je qui bon mais aux sont nous j' n' c' qu'".split(
    ' ',
  ),
  nl: 'het een van niet ook zijn heeft deze voor maar er wordt nog naar'.split(' '),
  it: 'il che di non una per sono della con molto anche gli nel'.split(' '),
  es: 'el los las con muy para por esta como del su pero'.split(' '),
};

const LANGUAGE_OF = new Map<string, string[]>();
for (const [language, words] of Object.entries(TELLING))
  for (const word of words) LANGUAGE_OF.set(word, [...(LANGUAGE_OF.get(word) ?? []), language]);

/**
 * The languages an advert may be read in: the page's own (a site's frame may be in another language than the seller
 * writes), and the one whose small words stand in it most. Empty when nothing tells: then every language is tried.
 */
export function languagesOf(pageLanguage: string | null, parts: readonly TextPart[]): Set<string> {
  const counts = new Map<string, number>();
  for (const part of parts)
    for (const [language, count] of tellingIn(part.tokens)) counts.set(language, (counts.get(language) ?? 0) + count);
  const found = new Set<string>();
  const page = pageLanguage?.split('-')[0];
  if (page) found.add(page);
  const most = Math.max(0, ...counts.values());
  if (most >= 2) for (const [language, count] of counts) if (count >= most * 0.6) found.add(language);
  return found;
}

const known = new WeakMap<readonly Token[], ReadonlyMap<string, number>>();

/** Language -> how many of its small words stand there, by the first of each. Asked of an advert and of each text of it. */
function tellingIn(tokens: readonly Token[]): ReadonlyMap<string, number> {
  const there = known.get(tokens);
  if (there) return there;
  const counts = new Map<string, number>();
  for (const { kind, folded } of tokens) {
    const languages = kind === 'word' ? LANGUAGE_OF.get(folded) : undefined;
    if (languages) for (const language of languages) counts.set(language, (counts.get(language) ?? 0) + 1);
  }
  known.set(tokens, counts);
  return counts;
}

export function speaks(languages: ReadonlySet<string>, phraseLanguage: string): boolean {
  return phraseLanguage === 'und' || languages.size === 0 || languages.has(phraseLanguage);
}
