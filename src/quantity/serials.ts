import { PhraseIndex, type PhraseMatch } from '../text/phrases';
import { type Token, tokenise } from '../text/tokens';
import { type Code, codeAt } from './serial-codes';
import { shapesIn } from './serial-shapes';
import type { SerialMention } from './types';

/** "1,234,567" is read as one number. */
const GROUP_COMMA = /(?<=\d),(?=\d)/g;
const SEPARATORS = /[\s\p{Z}\p{Pd}./\\_·−\p{Default_Ignorable_Code_Point}]/gu;

const PLAIN = /^[A-Za-z\d]+$/;

/** A serial in its plain form: upper case, compatibility forms resolved, spaces, dots, hyphens and slashes dropped. */
export function normaliseSerial(text: string): string {
  // Most are written so, and there is nothing to resolve or drop.
  if (PLAIN.test(text)) return text.toUpperCase();
  // Composed last: what was parted by an invisible character comes together only when that is gone.
  return text.normalize('NFKD').toUpperCase().replace(SEPARATORS, '').replace(GROUP_COMMA, '').normalize('NFKC');
}

const SERIAL_WORDS = new PhraseIndex<true>();
for (const phrase of [
  'serial',
  'serial number',
  'serial no',
  'serial nr',
  'serial num',
  'serial #',
  'serial n°',
  'serial nº',
  'ser',
  'ser no',
  'ser nr',
  's/n',
  'sn',
  's no',
  'machine number',
  'machine no',
  'number on the bed',
  'number on the bed plate',
  'number on the bedplate',
  'number on the plate',
  'number on the base',
  'number on the underside',
  'number on the pillar',
  'number on the machine',
  'number under the bed',
  'number underneath',
  'number stamped',
  'stamped number',
  'stamped no',
  'stamped with number',
  'number is stamped',
  'seriennummer',
  'serien nummer',
  'seriennr',
  'serien nr',
  'fabriknummer',
  'fabriknr',
  'fabrik nr',
  'fabrikationsnummer',
  'fabrikations nr',
  'maschinennummer',
  'maschinennr',
  'maschinen nr',
  'masch nr',
  'fabr nr',
  'nähmaschinennummer',
  'nummer eingeprägt',
  'nr eingeprägt',
  'eingeprägte nummer',
  'eingeprägte nr',
  'eingestanzte nummer',
  'nummer auf der grundplatte',
  'nummer auf der platte',
  'numéro de série',
  'numero de serie',
  'n° de série',
  'no de série',
  'num de série',
  'nº de série',
  'n° série',
  'numéro de fabrication',
  'n° de fabrication',
  'numéro de machine',
  'numéro gravé',
  'numéro frappé',
])
  SERIAL_WORDS.add(phrase, true);

/** Words that make a number on a machine something else than its serial: "part number on the plate". */
const OTHER_NUMBERS = new Set(
  (
    'part parts patent patents pat model modell modele item lot stock phone tel telephone article artikel casting order bestell ' +
    'ref reference teile teil ersatzteil sku invoice receipt telefon motor'
  ).split(' '),
);

/** Words that may stand between "serial" and the number. */
const FILLERS = new Set(
  (
    'is are was no nr num number numbers nummer reads read shows says stamped engraved marked on in under the it its of bed plate base right left side front back top bottom near this my looks like appears to be seems probably laut plakette typenschild ' +
    'underside pillar arm machine here ist lautet sind die der das auf dem est le la sur gravé frappe grave and as follows eingepragt'
  ).split(' '),
);
const FILLER_MARKS = new Set([':', '=', '#', '-', '.', '(', ')', ',', '"', "'", '°']);
const MOST_BETWEEN = 12;
/** Numbers this short are counts and class numbers more often than serials. */
const FEWEST_DIGITS = 3;

/** From the words for a serial on, the code that follows, with only fillers between; null where there is none. */
function codeAfter(text: string, tokens: readonly Token[], from: number): Code | null {
  for (let at = from; at < tokens.length && at < from + MOST_BETWEEN; at++) {
    const token = tokens[at]!;
    if (token.kind === 'break' && at !== from && !/^[.:]$/.test(tokens[at - 1]!.folded)) return null;
    const code = codeAt(text, tokens, at, true);
    if (code) return code.digits >= FEWEST_DIGITS ? code : null;
    if (token.kind === 'word' ? !FILLERS.has(token.folded) : token.kind === 'mark' && !FILLER_MARKS.has(token.folded))
      return null;
    if (token.kind === 'number') return null;
  }
  return null;
}

const LISTED = new Set([',', '&', '/', 'and', 'und', 'et', 'or', 'oder', 'ou']);

/** "K20417 and K20418": the next code of the same make in a list. */
function codeListedAfter(text: string, tokens: readonly Token[], code: Code): Code | null {
  if (!LISTED.has(tokens[code.last + 1]?.folded ?? '')) return null;
  const next = codeAt(text, tokens, code.last + 2, true);
  return next && next.letters === code.letters && next.digits === code.digits && next.letters.length + next.digits >= 5
    ? next
    : null;
}

function toMention(text: string, tokens: readonly Token[], code: Code, cue: string | null): SerialMention {
  const start = tokens[code.first]!.start;
  const end = tokens[code.last]!.end;
  const quote = text.slice(start, end);
  return { start, end, quote, normal: normaliseSerial(quote), cue };
}

function isOther(tokens: readonly Token[], match: PhraseMatch<true>): boolean {
  return OTHER_NUMBERS.has(tokens[match.firstToken - 1]?.folded ?? '');
}

/** Numbers that words call a serial ("serial no. K 20-417"), in order; "starts with K20" is none. Never throws. */
export function findSerials(text: string): SerialMention[] {
  const tokens = tokenise(text);
  const found: SerialMention[] = [];
  let taken = -1;
  for (const match of SERIAL_WORDS.search(tokens)) {
    if (match.lastToken < taken || isOther(tokens, match)) continue;
    let code = codeAfter(text, tokens, match.lastToken + 1);
    while (code && code.first > taken) {
      if (!code.isCut) found.push(toMention(text, tokens, code, text.slice(match.start, match.end)));
      taken = code.last;
      code = codeListedAfter(text, tokens, code);
    }
  }
  return found;
}

/**
 * What has the shape of a serial with no word that says so: up to three letters, 4 to 10 digits, perhaps a letter.
 * Not money, measures, years, dates, phone numbers, or numbers that other words claim. For comparing with the
 * schemes that packs know. Never throws.
 */
export function findSerialShapes(text: string): SerialMention[] {
  const { tokens, codes } = shapesIn(text);
  return codes.map((code) => toMention(text, tokens, code, null));
}
