import type { Listing } from '../../src/listing/types';

/** Elements that are parts of a page by themselves. */
const PARTS = 'nav, aside, footer, header, section';
/** Elements that are one where they bring their own heading, their own way on, or say so. */
const PARTS_IF = 'div, form, dialog, article, ul, details';
const SAYS_SO =
  'form, dialog, [role=navigation], [role=search], [role=banner], [role=contentinfo], [role=complementary], :has(h2, h3, h4, h5, h6, nav, form)';
/** What may tell machines of the advert, or be its frame. */
const OF_ADVERT = '[itemprop], [itemscope], [property], [typeof], time, main, article, h1';

const folded = (text: string): string => text.replace(/\s+/g, ' ').toLowerCase();

/**
 * The parts of a page that say nothing of its advert, as siblings that could stand in any order, two or more together; and
 * its blocks of JSON-LD.
 */
export function groupsBesideAdvert(document: Document, advert: Listing): Element[][] {
  const { title, priceText, description, condition, place, serials, photos } = advert;
  const its = [title, priceText, description.slice(0, 40), condition ?? '', place ?? '', ...serials]
    .map(folded)
    .filter((words) => words.length > 2);
  const isBeside = (part: Element): boolean => {
    if (!part.matches(PARTS) && !(part.matches(PARTS_IF) && part.matches(SAYS_SO))) return false;
    const words = folded(part.textContent ?? '');
    return (
      !its.some((one) => words.includes(one)) &&
      !part.matches(OF_ADVERT) &&
      part.querySelector(OF_ADVERT) === null &&
      ![...part.querySelectorAll('img')].some(({ src }) => photos.includes(src))
    );
  };
  const groups = [document.body, ...document.body.querySelectorAll('*')].map((parent) =>
    [...parent.children].filter(isBeside),
  );
  groups.push([...document.querySelectorAll('script[type="application/ld+json"]')]);
  return groups.filter(({ length }) => length > 1);
}

/** Puts siblings into each other's places, in an order that the numbers say. */
export function inOrder(parts: readonly Element[], next: () => number): void {
  const places = parts.map((part) => {
    const place = part.ownerDocument.createComment('');
    part.replaceWith(place);
    return place;
  });
  const left = [...parts];
  for (const place of places) place.replaceWith(...left.splice(next() % left.length, 1));
}
