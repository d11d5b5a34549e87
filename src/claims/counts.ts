import { quoteOf, tokenAt } from './part-text';
import type { CountClaim } from './reading';
import type { PartReading } from './values';

/** "Only 200 ever made", "one of just 500 built", "nur 300 Stück gebaut", "seulement 400 exemplaires". */
const FEW_MADE =
  /\b(?:only|just|fewer than|less than|under|nur|lediglich|weniger als|seulement|moins de) (?:about |around |some |etwa |rund |environ )?(\d{1,3}(?:[.,\u202f\u00a0 ]\d{3}){1,2}|\d{1,7}) ?(?:of (?:them|these|those) |were |was |stück |exemplaires? )?(?:ever |je |jemals )?(?:made|built|produced|manufactured|exist|known|survive|gebaut|hergestellt|produziert|fabriqués|fabriquées|produits|exemplaires)\b/giu;

/** "One of 500": nobody says so of the few machines on sale. */
const ONE_OF =
  /\b(?:one of|eine von|eine der|une des) (?:only |just |about |the |nur |etwa )?(\d{1,3}(?:[.,]\d{3}){1,2}|\d{2,7})\b/giu;

/** How many the advert says were made. */
export function countsIn({ part, stances }: PartReading): CountClaim[] {
  const few = [...part.text.matchAll(FEW_MADE)];
  const oneOf = [...part.text.matchAll(ONE_OF)].filter((found) => !few.some((other) => overlap(found, other)));
  return [...few, ...oneOf].map((found) => {
    const start = found.index;
    const end = start + found[0].length;
    const stance = stances.at(tokenAt(part, start), tokenAt(part, end - 1));
    return { ...quoteOf(part, start, end), ...stance, most: Number(found[1]!.replace(/\D/g, '')) };
  });
}

function overlap(a: RegExpExecArray, b: RegExpExecArray): boolean {
  return a.index < b.index + b[0].length && b.index < a.index + a[0].length;
}
