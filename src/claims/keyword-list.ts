import { inEitherForm } from '../text/either-form';
import { firstNotBefore } from '../text/in-order';
import type { Span } from '../text/span';
import type { Token } from '../text/tokens';
import { ofAnother } from './other-thing';
import type { TextPart } from './part-text';
import type { Stanced } from './types';

/** A line that opens so lists what people search for, not what the thing is. Common practice, no source. */
const HEADING = inEitherForm(
  /^[^\p{L}\p{N}]*(?:tags?|hash ?tags?|key ?words?|search (?:terms?|words?)|(?:other |related |popular |past )?searches|also search(?:ed)?(?: for)?|words for the search[^:.]{0,60}|such(?:begriffe|wörter|worte|wort)|stich(?:worte|wörter)|schlag(?:worte|wörter)|mots?[ -]cl(?:és?|efs?)|trefwoorden|parole chiave|palabras clave)\s*[:–—-]/iu,
);
/** What follows is on sale besides. */
const GOODS = inEitherForm(
  /^[^\p{L}\p{N}]*(?:also (?:in stock|available|for sale|selling|here|listed)|in stock(?: too)?|other (?:items|machines|things|lots|stock)[^:.]{0,30}|more (?:items|machines)[^:.]{0,30}|what is not for sale|not for sale|auch (?:zu verkaufen|im angebot|abzugeben)|weitere (?:maschinen|anzeigen|artikel)[^:.]{0,30}|außerdem(?: zu verkaufen)?|(?:à vendre|en vente|disponibles?) (?:aussi|également)|(?:aussi|également) (?:à vendre|en vente|en stock|disponibles?)|en stock|autres (?:annonces|articles|machines)[^:.]{0,30})\s*[:–—-]/iu,
);
/** Words of shops and crafts that no seller uses to describe one machine, but to be found. Folded. */
const SOUGHT =
  /^(?:vintage|retro|antique|collectors?|collectable|collectible|shabby|chic|steampunk|upholstery|leather|leathercraft|quilting|patchwork|crafts?|haberdashery|dressmaking|tailoring|embroidery|overlock|overlocker|serger|cosplay|sewing|handmade|hobby|deko|vintage-deko|antik|nahen|basteln|polster|leder|patchen|handarbeit|couture|brocante|mercerie|deco|cuir|broderie)$/;
const FEWEST_WORDS = 5;
const FEWEST_SOUGHT = 3;
const MANY_WORDS = 7;
const HASHTAG = /(?:^|\s)#\p{L}[\p{L}\p{N}_-]*/gu;

/**
 * Lists of words to be found by, which claim nothing: hashtags, what follows "tags:" or "keywords:" up to the next sentence, a
 * last line of nothing but such words.
 */
export class KeywordLists {
  /** Each in order and apart; a hashtag may stand in a listed line. */
  readonly #lists = new Map<TextPart, { hashtags: Span[]; lines: Span[]; goods: Span[] }>();

  constructor(parts: readonly TextPart[]) {
    for (const part of parts)
      if (part.field === 'description')
        this.#lists.set(part, {
          hashtags: hashtagsIn(part),
          lines: listedLines(part),
          goods: stretchesOf(part.text).filter(({ text }) => GOODS.test(text)),
        });
  }

  weigh<C extends Stanced>(claim: C, part: TextPart): C {
    const lists = this.#lists.get(part);
    if (lists && isWithin(claim, lists.goods)) return ofAnother(claim, 'listed-thing');
    return lists && (isWithin(claim, lists.hashtags) || isWithin(claim, lists.lines))
      ? ofAnother(claim, 'keywords')
      : claim;
  }
}

function isWithin(claim: Span, spans: readonly Span[]): boolean {
  const holding = spans[firstNotBefore(spans, ({ end }) => end < claim.end)];
  return holding !== undefined && holding.start <= claim.start;
}

function hashtagsIn(part: TextPart): Span[] {
  if (!part.text.includes('#')) return [];
  return [...part.text.matchAll(HASHTAG)].map((tag) => ({ start: tag.index, end: tag.index + tag[0].length }));
}

function listedLines(part: TextPart): Span[] {
  const found: Span[] = [];
  const lines = stretchesOf(part.text);
  let headed = false;
  lines.forEach((line, at) => {
    // The list runs on until a sentence comes.
    headed = HEADING.test(line.text) || isHeadedBare(part, line) || (headed && !/[.!?:]\s*$/.test(line.text));
    if (headed || (at > 0 && at === lines.length - 1 && isSoughtOnly(part, line))) found.push(line);
  });
  return found;
}

/** Lines, and the sentences in a line: what is pasted into one line has its lists at the end of it. */
function stretchesOf(text: string): Stretch[] {
  let start = 0;
  const found: Stretch[] = [];
  text.split(/(\n|(?<=[.!?])\s+)/u).forEach((piece, at) => {
    const end = start + piece.length;
    if (at % 2 === 0) found.push({ text: piece, start, end });
    start = end;
  });
  while (found.length > 0 && found.at(-1)!.text.trim() === '') found.pop();
  return found;
}

interface Stretch extends Span {
  text: string;
}

/** Small words and verbs by which words say something together. Folded. */
const SAYING =
  /^(?:for|and|with|is|does|has|sews|takes|the|a|an|it|of|to|in|from|fur|und|mit|ist|hat|naht|die|der|das|pour|et|avec|est|fait|la|le|les|de|en)$/;

const BARE_HEADING = inEitherForm(/^[^\p{L}\p{N}]*(?:tags?|hash ?tags?|key ?words?|suchbegriffe|mots[ -]clés)\s/iu);

/** "Tags retro zigzag treadle": a heading without its colon, where nothing is said. */
function isHeadedBare(part: TextPart, line: Stretch): boolean {
  if (!BARE_HEADING.test(line.text)) return false;
  const words = wordsWithin(part, line);
  return words.length > FEWEST_SOUGHT && !words.some(({ folded }) => SAYING.test(folded));
}

const wordsWithin = (part: TextPart, line: Span): Token[] =>
  part.tokens.filter(({ kind, start, end }) => kind === 'word' && start >= line.start && end <= line.end);

/** "1950s", "class 15" stand in such lists too. */
const NUMBERED = /\b(?:1[5-9]\d\d(?:['’]?s)?|\d0['’]?s|(?:class|classe|klasse) \d+)\b/gi;

/** Words without a sentence among which some are only there to be found by. */
function isSoughtOnly(part: TextPart, line: Stretch): boolean {
  if (/[.!?:\d]/.test(line.text.trim().slice(0, -1).replace(NUMBERED, ''))) return false;
  const words = wordsWithin(part, line);
  const sought = words.filter(({ folded }) => SOUGHT.test(folded)).length;
  const isSaid = words.some(({ folded }) => SAYING.test(folded));
  return words.length >= FEWEST_WORDS && sought >= (isSaid || words.length < MANY_WORDS ? FEWEST_SOUGHT : 2);
}
