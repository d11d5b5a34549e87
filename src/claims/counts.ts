import { inEitherForm } from '../text/either-form';
import { fold } from '../text/fold';
import { matchesNear } from './matches-near';
import { quoteOf, tokenAt } from './part-text';
import type { CountClaim } from './reading';
import type { PartReading } from './values';

const WORDS: Record<string, number> = {
  three: 3,
  four: 4,
  five: 5,
  'a dozen': 12,
  drei: 3,
  vier: 4,
  fünf: 5,
  trois: 3,
  quatre: 4,
  cinq: 5,
  ten: 10,
  twenty: 20,
  thirty: 30,
  forty: 40,
  fifty: 50,
  sixty: 60,
  hundred: 100,
  'two hundred': 200,
  'three hundred': 300,
  'four hundred': 400,
  'six hundred': 600,
  'a thousand': 1000,
  'one thousand': 1000,
  'five hundred': 500,
  'a hundred': 100,
  'a few hundred': 400,
  'a couple of hundred': 200,
  'several hundred': 500,
  'a few dozen': 40,
  'a handful': 6,
  'one hundred': 100,
  zehn: 10,
  zwanzig: 20,
  fünfzig: 50,
  hundert: 100,
  dix: 10,
  vingt: 20,
  cinquante: 50,
  cent: 100,
};
const NUMBER = `(\\d{1,3}(?:[.,\\u202f\\u00a0 ]\\d{3}){1,2}|\\d{1,7}|${Object.keys(WORDS).join('|')})`;
const FEW =
  "(?:only|just|fewer than|less than|no more than|not more than|under|nur|lediglich|weniger als|seulement|moins de|que|qu['’]à)";
const MADE =
  '(?:made|built|produced|manufactured|put together|assembled|turned out|came (?:here|to this country|over)|left the (?:factory|works)|exist|known|survive|gebaut|gefertigt|hergestellt|produziert|fabriqués|fabriquées|produits|exemplaires|connues|connus|bekannt|are left in the world|left in the world|left in existence|of this model|of these models|in the world|worldwide)';

/** "Only 200 ever made", "just 40 of this model", "nur 300 Stück gebaut", "fabriquée à 50 exemplaires seulement". */
const FEW_MADE = inEitherForm(
  new RegExp(
    `\\b${FEW} (?:noch )?(?:about |around |some |etwa |rund |environ )?${NUMBER} ?(?:of (?:(?:them|these|those|(?:her|his|its|this|the) kind) |the (?:[\\p{L}\\d]{1,14} ){1,3}?))?(?:(?:zigzag|sewing|black|green|little|small|alloy|iron) )?(?:machines? |models? |heads? )?(?:\\p{Lu}\\p{Ll}+s? )?(?:were |was |stück |exemplare |exemplaires? |davon |de )*(?:wurden |ont été )?(?:ever |je |jemals )?${MADE}\\b`,
    'iuy',
  ),
);
/** "They only made 500". */
const MADE_FEW = new RegExp(
  `\\b(?:only|just)(?: ever)? (?:made|built|produced|manufactured)(?: about| around| some)? ${NUMBER}\\b(?! ?(?:kg|lbs?|mm|cm|volts?|watts?|in|to|by|for)\\b)`,
  'iuy',
);
const FEW_CUES = /only|just|fewer|less|no more|not more|under|nur|lediglich|weniger|seulement|moins|que |qu.a /g;
/** "Limited edition of 500". */
const LIMITED = new RegExp(
  `\\b(?:limited (?:edition|run|series)|limitierte (?:auflage|serie)|(?:édition|série) limitée) (?:of|von|de|à) (?:about |only |just |nur |etwa )?${NUMBER}\\b`,
  'iuy',
);
const LIMITED_CUES = /limited|limitierte|edition limitee|serie limitee/g;
const EXEMPLAIRES = new RegExp(
  `\\b${NUMBER} exemplaires? (?:seulement|en tout|au total|fabriqués|produits)(?![\\p{L}])`,
  'giu',
);
/** "One of 500": nobody says so of the few machines on sale. */
const ONE_OF =
  /\b(?:one of|1 of|eine von|eine der|une des|un des|l'une des|l'un des) (?:only |just |about |the |nur |etwa |the last |the only )?(\d{1,3}(?:[.,]\d{3}){1,2}|\d{2,7}|fifty|twenty|thirty|forty|sixty|hundred)\b(?! ?(?:kg|kilos?|lbs?|pounds|mm|cm|inch|miles|minutes|machines i))/giu;

const ONE_OF_CUES = /one of|1 of|eine von|eine der|une? des/g;

/** "Only 5 made … of my curtains". */
const OF_MINE = /^\W*(?:of|de|von) (?:my|our|mes|nos|mein|unser)/i;

/** How many the advert says were made. */
export function countsIn({ part, stances }: PartReading): CountClaim[] {
  const { text } = part;
  const few = matchesNear(text, FEW_MADE, FEW_CUES);
  few.push(...matchesNear(text, MADE_FEW, FEW_CUES));
  few.push(...matchesNear(text, LIMITED, LIMITED_CUES));
  if (fold(text).text.includes('exemplaire')) few.push(...text.matchAll(EXEMPLAIRES));
  const oneOf = matchesNear(text, ONE_OF, ONE_OF_CUES).filter((found) => !few.some((other) => overlap(found, other)));
  return [...few, ...oneOf].flatMap((found) => {
    const start = found.index;
    const end = start + found[0].length;
    if (OF_MINE.test(text.slice(end, end + 16))) return [];
    const stance = stances.at(tokenAt(part, start), tokenAt(part, end - 1));
    // "One of 1950", "Name 1 of 1912".
    if (/^(?:one|1|eine) (?:of|von) (?:the )?1[789]\d\d$/i.test(found[0])) return [];
    const most = WORDS[found[1]!.normalize('NFC').toLowerCase()] ?? Number(found[1]!.replace(/\D/g, ''));
    return [{ ...quoteOf(part, start, end), ...stance, most }];
  });
}

function overlap(a: RegExpExecArray, b: RegExpExecArray): boolean {
  return a.index < b.index + b[0].length && b.index < a.index + a[0].length;
}
