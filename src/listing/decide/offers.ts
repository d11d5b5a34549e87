import type { PageFindings } from '../sources/page';

/** What speaks for and against the page's being one advert. Lengths in characters. */
export interface OfferEvidence {
  page: PageFindings;
  /** The page's title is the window's, or that of the head. */
  titleAgrees: boolean;
  /** The head, or linked data about the thing that the title names, says that it is a product. */
  told: 'product' | 'named' | null;
  /** A state object of the page's scripts is the page's own advert. */
  state: boolean;
  /** Linked data calls the page an article, or a list of results. */
  isArticle: boolean;
  isList: boolean;
  /** Its one product has many offers, as a category has. */
  isCategory: boolean;
  /** The window's title counts things: "10 adverts". */
  counts: boolean;
  /** The most things for sale side by side that any source tells. */
  side: number;
}

/** Of one advert at least so much speaks for a sale, and so much in all. */
const SALE_LEAST = 0.7;
const ALL_LEAST = 2.2;
/** More cards than an advert shows beside itself, where nothing else is said of it. */
const CARDS_BESIDE = 3;
const WORDS_LEAST = 80;

/**
 * How many things for sale a page shows: 0 none, 1 an advert, more a list. One advert sells (a price of its own, the rows
 * of an advert, a way to its seller, words of selling, machines are told so) and is of one thing (its title is the
 * window's, the seller's own words, photographs, rows); a list counts and sorts, and has its prices in its cards.
 */
export function offersIn(evidence: OfferEvidence): number {
  const { page, side } = evidence;
  const { marks } = page;
  if (marks.gone && page.price < 0.5) return 0;
  const isTold = evidence.told !== null && !evidence.isCategory;
  const sale =
    (page.price >= 0.5 ? 1.4 : page.price >= 0.3 ? 0.8 : page.price >= 0.2 ? 0.7 : 0) +
    (marks.particulars ? 1.2 : 0) +
    (marks.contact ? 0.8 : 0) +
    (marks.selling ? 0.7 : 0) +
    (marks.place ? 0.3 : 0) +
    (marks.sale ? 0.8 : 0) +
    (marks.labelled ? 0.7 : 0) +
    (marks.asks ? (marks.selling || marks.contact ? 1.2 : 0.4) : 0) +
    (isTold ? (evidence.told === 'named' ? 3 : 1.5) : 0) +
    (evidence.state ? 2 : 0);
  const single =
    (evidence.titleAgrees ? 0.7 : page.isApart ? 0.4 : 0) +
    (page.words >= WORDS_LEAST || marks.labelled ? 0.8 : 0) +
    (page.photos > 0 ? 0.4 : 0) +
    (page.rows >= 2 ? 0.5 : 0);
  const bare =
    page.words < WORDS_LEAST && !marks.labelled && page.rows < 2 && evidence.told !== 'named' && !evidence.state;
  const against =
    (marks.list ? 2 : 0) +
    (evidence.isList ? 2 : 0) +
    (evidence.counts ? 2 : 0) +
    (evidence.isArticle ? (marks.asks && marks.selling ? 1.5 : 4) : 0) +
    (evidence.isCategory ? 1 : 0) +
    (page.cards > CARDS_BESIDE && bare ? 1.5 : 0) +
    (page.cards > 1 && page.price < 0.3 && bare ? 1 : 0);
  if (sale >= SALE_LEAST && sale + single - against >= ALL_LEAST) return 1;
  if (side > 1) return side;
  if (evidence.isArticle || against >= 2) return 0;
  return side === 1 || evidence.told !== null || sale >= SALE_LEAST ? 1 : 0;
}
