const REACH = 60;
const ENDS_STATEMENT = /[!?;\n]|\.(?!\d)/;

const WEIGHT_WORDS =
  /(?<!\p{L})(?:weigh|weighs|weighed|weighing|weight|heavy|heavier|hefty|light|lighter|lightweight|lift|scales?)(?!\p{L})/gu;
const MONEY_WORDS =
  /(?<!\p{L})(?:asking|price|priced|sell|selling|sold|sale|pay|paid|cost|costs|cash|offers?|ono|obo|bid|bids|worth|value|buy|bought|postage|delivery|shipping|collected|save|spent)(?!\p{L})|[£$€]/gu;
const OUNCES = /^(?:,| and| &)? ?\d+(?: \d\/\d| ?\.\d+)? ?(?:oz|ounces?)(?!\p{L})/u;

function nearest(pattern: RegExp, before: string, after: string): number {
  let distance = Number.POSITIVE_INFINITY;
  for (const match of before.matchAll(pattern)) distance = before.length - match.index - match[0].length;
  for (const match of after.matchAll(pattern)) distance = Math.min(distance, match.index);
  return distance;
}

/**
 * "21 pounds" in a folded text is a weight where ounces follow, or where, in the same statement and within 60
 * characters, a word of weighing stands nearer than any word of paying; otherwise it is money. The span is from the
 * first digit to the end of the word.
 */
export function arePoundsWeight(folded: string, start: number, end: number): boolean {
  if (OUNCES.test(folded.slice(end, end + 20))) return true;
  let before = folded.slice(Math.max(0, start - REACH), start);
  let after = folded.slice(end, end + REACH);
  for (let cut = before.search(ENDS_STATEMENT); cut >= 0; cut = before.search(ENDS_STATEMENT))
    before = before.slice(cut + 1);
  const cut = after.search(ENDS_STATEMENT);
  if (cut >= 0) after = after.slice(0, cut);
  const weight = nearest(WEIGHT_WORDS, before, after);
  return Number.isFinite(weight) && weight < nearest(MONEY_WORDS, before, after);
}
