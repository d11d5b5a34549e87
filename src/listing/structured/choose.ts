import { sharedWords } from '../page/shared-words';
import { is, type Thing, text, texts, things } from './things';

/** What the structured data of a page says is for sale. */
export interface Choice {
  /** The thing that the page is about, or null. */
  main: Thing | null;
  /** How many things for sale there are, the main one among them; lists of other things are not counted beside a main one. */
  count: number;
  /** Something at the top says that the page is an article, or a list of things. */
  isArticle: boolean;
  isList: boolean;
}

const FOR_SALE =
  /^(?:Product|IndividualProduct|ProductModel|SomeProducts|ProductGroup|Offer|Offering|AggregateOffer|Vehicle|Car|CreativeWork|VisualArtwork)$/;
const PRODUCT = /^(?:Product|IndividualProduct|ProductModel|SomeProducts|ProductGroup|Vehicle|Car)$/;

const ARTICLE = /^(?:(?:News|Blog|Tech|Scholarly)?Article|BlogPosting|HowTo)$/;
const PAGE_OF_MANY = /^(?:CollectionPage|SearchResultsPage)$/;
const LIST = /^(?:ItemList|OfferCatalog|Collection|CollectionPage|SearchResultsPage)$/;
/** Ways from a page to what it is about. */
const TOWARDS = ['mainEntity', 'about', 'itemOffered', 'hasPart'];
/** Ways from a list to its members. */
const MEMBERS = ['itemListElement', 'item', 'mainEntity'];
/** Ways to things that are not this one. */
const OTHERS = ['isRelatedTo', 'isSimilarTo', 'isAccessoryOrSparePartFor', 'isConsumableFor'];
const STEPS_MOST = 3000;

/**
 * Which of several products is the page's: one named as the page's main entity, one with the page's address, one whose
 * name is most like the page's title; else the only one. With several and no such reason, none.
 */
export function chooseMain(top: Thing[], page: { url: string; titles: string[] }): Choice {
  const products: { thing: Thing; isMain: boolean }[] = [];
  const listed = new Set<Thing>();
  const others = new Set<Thing>();
  const seen = new Set<Thing>();
  const waiting = top.map((thing) => ({ thing, isMain: false, inList: false })).reverse();

  for (let steps = 0; waiting.length > 0 && steps < STEPS_MOST; steps++) {
    const { thing, isMain, inList } = waiting.pop()!;
    // A product at the top of the page may be met in a list first; what is said of it twice counts once.
    if (seen.has(thing)) continue;
    seen.add(thing);
    const isList = is(thing, LIST);
    if (
      is(thing, FOR_SALE) &&
      (is(thing, PRODUCT) || text(thing, 'name') || things(thing, 'itemOffered').length > 0 || isSoldAs(thing))
    ) {
      if (inList) listed.add(thing);
      else products.push({ thing, isMain });
      for (const way of OTHERS) for (const other of things(thing, way)) others.add(other);
      // An offer whose product follows is one thing for sale, not two.
      continue;
    }
    if (isList || is(thing, /^ListItem$/)) {
      for (const way of MEMBERS)
        for (const next of things(thing, way)) waiting.push({ thing: next, isMain: false, inList: true });
      if (is(thing, /^ListItem$/) && things(thing, 'item').length === 0 && text(thing, 'url', 'item'))
        listed.add(thing);
      continue;
    }
    if (is(thing, /^BreadcrumbList$/)) continue;
    const said = things(thing, 'mainEntityOfPage').length > 0;
    for (const way of TOWARDS) {
      for (const next of things(thing, way))
        waiting.push({ thing: next, isMain: isMain || said || way === 'mainEntity', inList });
    }
  }

  const isArticle = top.some((thing) => is(thing, ARTICLE));
  const isList = top.some((thing) => is(thing, PAGE_OF_MANY));
  const own = products.filter(({ thing }) => !others.has(thing));
  const main = pick(own, page);
  if (main) return { main, count: 1, isArticle, isList };
  return { main: null, count: Math.max(own.length, 0) + listed.size, isArticle, isList };
}

/** An artwork or the like counts as for sale only with an offer. */
const isSoldAs = (thing: Thing): boolean => things(thing, 'offers').length > 0;

function pick(products: { thing: Thing; isMain: boolean }[], page: { url: string; titles: string[] }): Thing | null {
  if (products.length === 1) return products[0]!.thing;
  const named = products.filter(({ isMain }) => isMain);
  if (named.length === 1) return named[0]!.thing;
  const here = products.filter(({ thing }) => addressesOf(thing).some((address) => sameAddress(address, page.url)));
  if (here.length === 1) return here[0]!.thing;
  let best: Thing | null = null;
  let most = 0.5;
  for (const { thing } of here.length > 0 ? here : products) {
    const name = text(thing, 'name') ?? text(things(thing, 'itemOffered')[0], 'name') ?? '';
    const likeness = Math.max(
      0,
      ...page.titles.map((title) => Math.min(sharedWords(name, title), sharedWords(title, name) * 1.5)),
    );
    // Of two of one name the one with an offer: some mark the page's frame as the thing once more.
    const isOffered = likeness === most && best !== null && isSoldAs(thing) && !isSoldAs(best);
    if (likeness > most || isOffered) {
      most = likeness;
      best = thing;
    }
  }
  return best;
}

const addressesOf = (thing: Thing): string[] => [
  ...texts(thing, 'url'),
  ...texts(thing, 'mainEntityOfPage'),
  ...things(thing, 'mainEntityOfPage').flatMap((page) => (page.id ? [page.id] : [])),
  ...things(thing, 'offers').flatMap((offer) => texts(offer, 'url')),
  ...(thing.id ? [thing.id] : []),
];

function sameAddress(address: string, url: string): boolean {
  try {
    const a = new URL(address, url);
    const b = new URL(url);
    // A fragment alone ("#product") names a part of this page, as every other thing on it may be named.
    return (
      !address.startsWith('#') &&
      a.hash === '' &&
      a.host === b.host &&
      a.pathname.replace(/\/$/, '') === b.pathname.replace(/\/$/, '')
    );
  } catch {
    return false;
  }
}
