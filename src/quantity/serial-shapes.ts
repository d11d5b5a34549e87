import { remembering } from '../text/remember';
import { type Token, tokenise } from '../text/tokens';
import { claimedNumbers } from './claimed-numbers';
import { isPhoneNumber } from './phones';
import { type Code, codeAt, isSmallWord } from './serial-codes';

/** Words before a number that say it is no serial. */
const NOT_BEFORE = new Set(
  (
    'class klasse classe model modell modele type typ size grosse taille part parts teil pat patent patents item lot stock artikel ' +
    'article ref tel telephone phone telefon mobile handy call ring text sku order isbn over about approx circa page room'
  ).split(' '),
);
/** Words after a number that say what it counts. */
const NOT_AFTER = new Set(
  'stitches stitch stiche years jahre ans v volt volts w watt watts hz rpm spm hours pieces pcs stuck needles bobbins miles km points'.split(
    ' ',
  ),
);
const FEWEST_DIGITS = 4;
const MOST_DIGITS = 10;
const YEAR = /^(?:1[5-9]|20)\d\d$/;

function looksLikeDate({ letters, groups }: Code): boolean {
  const year = groups.findIndex((group) => YEAR.test(group));
  if (letters !== '' && !isSmallWord(letters)) return false;
  return year >= 0 && groups.every((group, at) => at === year || group.length <= 2 || YEAR.test(group));
}

function isDecimal(text: string, tokens: readonly Token[], { letters, groups, last }: Code): boolean {
  return letters === '' && groups.length > 1 && groups.at(-1)!.length <= 2 && text[tokens[last]!.start - 1] === '.';
}

/** "220-240V": the letter behind is a unit. */
function endsInUnit(tokens: readonly Token[], { letters, last }: Code): boolean {
  return letters === '' && tokens[last]!.kind === 'word' && /^[vwxkmg]$/.test(tokens[last]!.folded);
}

const NUMBER_SIGN = /^(?:no|nr|num|number|nummer)$/;

/** The word before in the same sentence, past marks and "no."; "" where a sentence begins. */
function wordBefore(tokens: readonly Token[], at: number): string {
  for (let before = at - 1; before >= 0; before--) {
    const { kind, folded } = tokens[before]!;
    const endsSentence =
      kind === 'break' || (/^[.!?;]$/.test(folded) && !NUMBER_SIGN.test(tokens[before - 1]?.folded ?? ''));
    if (endsSentence) return '';
    if (kind !== 'mark' && !NUMBER_SIGN.test(folded)) return folded;
  }
  return '';
}

function isShape(text: string, tokens: readonly Token[], code: Code): boolean {
  if (code.digits < FEWEST_DIGITS || code.digits > MOST_DIGITS || code.isCut) return false;
  if (looksLikeDate(code) || isDecimal(text, tokens, code) || endsInUnit(tokens, code)) return false;
  if (NOT_BEFORE.has(wordBefore(tokens, code.first))) return false;
  const next = tokens[code.last + 1];
  if (next && (next.folded === '%' || NOT_AFTER.has(next.folded))) return false;
  return code.letters !== '' || !isPhoneNumber(text, tokens[code.first]!.start);
}

/** Codes with the shape of a serial that no word calls one, as spans of tokens: see `findSerialShapes`. */
export const shapesIn = remembering((text: string): { tokens: readonly Token[]; codes: readonly Code[] } => {
  const tokens = tokenise(text);
  const claimed = claimedNumbers(text);
  const codes: Code[] = [];
  let claim = 0;
  for (let at = 0; at < tokens.length; at++) {
    const code = codeAt(text, tokens, at, false);
    if (!code) continue;
    at = code.last;
    const start = tokens[code.first]!.start;
    while (claim < claimed.length && claimed[claim]!.end <= start) claim++;
    const isClaimed = claim < claimed.length && claimed[claim]!.start < tokens[code.last]!.end;
    if (!isClaimed && isShape(text, tokens, code)) codes.push(code);
  }
  return { tokens, codes };
});
