import { followsPriceOnly } from './money-words';
import { isPhoneNumber } from './phones';
import type { YearCore } from './year-cores';

const OTHER_NUMBER =
  /(?:^|[^\p{L}])(?:models?|modell|modele|class|klasse|classe|type|typ|series|serie|size|grosse|taille|no|nr|nos|num|number|nummer|numero|art|part|lot|item|ref|system|serial|sn|s\/n|phone|tel|telephone|telefon|call|text|ring|isbn|plz|price|preis|prix|asking|vh?b|festpreis|fp)(?: ?(?:no|nr|is|number))?[.:]? ?(?:[:#"'(]{1,2} ?)?$/u;
const COUNTED =
  /^ ?(?:%|stitch|stiche|points?(?!\p{L})|watts?(?!\p{L})|[vw](?!\p{L})|volts?(?!\p{L})|hz(?!\p{L})|rpm|spm|pcs|pieces|stuck(?!\p{L})|hours|stunden|miles|(?:mm|cm|kg|g|lbs?|oz|km)(?!\p{L})|x ?\d|×|needles|bobbins|pounds|euros?(?!\p{L})|sheets|seiten|pages)/u;
/** Day and month before a year: "12.05.1954", "5/1954". */
const DATE_BEFORE = /(?:^|[^\d./-])(?:(?:0?[1-9]|[12]\d|3[01])[./-])?(?:0?[1-9]|[12]\d|3[01])[./-]$/;
const MONTH_BEFORE = /(?:^|[^\d./-])(?:0?[1-9]|1[0-2])[./-]$/;
const DATE_START = /(?:^|[^\d./-])(?:0?[1-9]|[12]\d|3[01])[./-](?:0?[1-9]|[12]\d|3[01])[./-]$/;
/** "One of only 2000 built": how many. */
const FEW =
  /(?:^|[^\p{L}])(?:only|just|one of|fewer than|less than|nur|lediglich|seulement) (?:about |around |some |etwa |rund )?$/u;
const MADE =
  /^ (?:of (?:them|these|those) )?(?:were |was )?(?:ever )?(?:made|built|produced|manufactured|turned out|left the|examples|exist|survive|gebaut|hergestellt|exemplaires|stuck)(?!\p{L})/u;
const GLUED_WORD = /(?<!\p{L})(?:c|ca|um|anno|bj|est|year|baujahr)$/u;
const YEAR_NEXT = /^ ?[-/] ?(?:1[5-9]\d\d|20\d\d)(?!\d)/;
const AGE = /(?:^|[^\p{L}])(?:his|her|my|their|your|our|seinen|ihren|meinen)(?: (?:early|mid|late))?[ -]$/u;

function isGluedToOther(folded: string, { start, end }: YearCore): boolean {
  const before = folded.slice(Math.max(0, start - 16), start);
  const after = folded.slice(end, end + 16);
  if (/[\p{L}\p{N}]$/u.test(before) && !GLUED_WORD.test(before)) return true;
  if (/^\p{L}/u.test(after) && !/^ish(?!p{L})/.test(after)) return true;
  if (/^[.,]\d/.test(after) || /[#@_*]$|\p{Sc} ?$/u.test(before)) return true;
  if (/^-(?:\d{3,}|\p{L}{1,2}(?!\p{L}))/u.test(after) && !YEAR_NEXT.test(after)) return true;
  if (/\d[./-]$/.test(before)) {
    const isDate = MONTH_BEFORE.test(before) || (DATE_BEFORE.test(before) && DATE_START.test(before));
    return !isDate && !/(?:1[5-9]|20)\d\d[/-]$/.test(before);
  }
  return /\d,$/.test(before) || /(?<!\p{L})\p{L}{1,2}-$/u.test(before);
}

/** Is what looks like a year something else: a price, a model or serial number, a measure, a phone number, an age? */
export function isNoYear(folded: string, core: YearCore): boolean {
  const before = folded.slice(Math.max(0, core.start - 32), core.start);
  if (core.isShort) return AGE.test(before);
  if (!core.isPlain) return false;
  const after = folded.slice(core.end, core.end + 24);
  if (isGluedToOther(folded, core) || OTHER_NUMBER.test(before)) return true;
  if (FEW.test(before) && (MADE.test(after) || /one of only $/.test(before))) return true;
  return COUNTED.test(after) || followsPriceOnly(after) || isPhoneNumber(folded, core.start);
}
