import { isCutOff } from './bare';
import { wellDecodedHarvest } from './decide/decoded-harvest';
import { guessLanguage } from './decide/language';
import { offersIn } from './decide/offers';
import { plain } from './decide/plain';
import { amountsIn } from './page/amounts';
import { isNewTerm, tellsCondition } from './page/condition-words';
import { countryOfAddress } from './page/country';
import { sharedWords } from './page/shared-words';
import { fromJsonLd } from './sources/json-ld';
import { fromMeta } from './sources/meta';
import { fromMicrodata } from './sources/microdata';
import { fromPage, type PageFindings } from './sources/page';
import { fromRdfa } from './sources/rdfa';
import { fromState } from './sources/state';
import { chooseMain } from './structured/choose';
import { candidatesOf } from './structured/product';
import { type Thing, text, things } from './structured/things';
import type { Candidate, FieldName, Harvest } from './types';
import { absolute } from './visit/addresses';

/** Of the words of two titles of one thing, at least so many are in both. */
const SAME_THING = 0.5;
const SAME_NAME = 0.6;
/** Weight of what is said of a thing that the page's titles do not name. */
const OF_ANOTHER = 0.3;
const COUNTED =
  /(?:^|[\s(:])\d[\d.,\s]*(?:results?|adverts?|ads|listings|items|anzeigen|treffer|ergebnisse|annonces|resultats|advertenties|annunci|anuncios|annonser|annoncer|ogłoszen|inzerát)/i;
const EACH_MOST = 60;
/** From this weight on a line is plainly the page's title. */
const PLAIN_TITLE = 0.7;
/** From this weight on a price stands plainly. */
const PLAIN_PRICE = 0.6;
const LIKELY_PRICE = 0.4;
/** No article has so many rows beside a price and a part called the description. */
const MANY_ROWS = 6;
/** Lines in which a page repeats its title. */
const OPENING = 200;

export interface Found {
  candidates: Candidate[];
  /** How many things for sale the page shows: 0 none, 1 an advert, more a list of adverts. */
  offers: number;
  /** Lower case, or null. */
  language: string | null;
  /** Countries that the page says it is in, or its advert. */
  countries: string[];
  /** ISO 4217: the one currency that the page names for machines, or null. */
  currency: string | null;
}

/** All that the sources of a harvest say, field by field, before anything is decided. */
export function candidatesIn(asRead: Harvest): Found {
  const harvest = wellDecodedHarvest(asRead);
  const meta = fromMeta(harvest);
  const visible = fromPage(harvest.page, meta);
  const isStale = isOfAnother(meta.candidates, meta.windowTitle, visible.title);
  if (isStale) meta.candidates = meta.candidates.filter(({ value }) => value === meta.windowTitle);
  const about = {
    url: isStale ? harvest.url : (meta.canonical ?? harvest.url),
    titles: [visible.title, meta.windowTitle].filter((title) => title !== ''),
  };
  const jsonLd = chooseMain(fromJsonLd(harvest.jsonLd), about);
  const microdata = chooseMain(fromMicrodata(harvest.items), about);
  const rdfa = chooseMain(fromRdfa(harvest.rdfa, harvest.base), about);

  // A window title that no line of the page repeats names the site or a number, not the thing.
  const isRepeated = [{ text: visible.title }, ...harvest.page.lines.slice(0, OPENING)].some(
    ({ text }) => sharedWords(meta.windowTitle, text) >= 0.6,
  );
  for (const one of meta.candidates)
    if (!isRepeated && one.field === 'title' && one.value === meta.windowTitle) one.weight = 0.25;

  // A window that names the site alone, while the page has a title of which it says no word.
  const best = visible.candidates.find(({ field }) => field === 'title');
  const isOfSite = best && best.weight >= PLAIN_TITLE && sharedWords(best.value, meta.windowTitle) === 0;
  for (const one of meta.candidates)
    if (isOfSite && one.field === 'title' && one.value === meta.windowTitle) one.weight = Math.min(one.weight, 0.15);

  // The head may name the site alone, as the page does above its title.
  for (const one of meta.candidates)
    if (one.field === 'title' && visible.siteNames.some((name) => sharedWords(one.value, name) === 1))
      one.weight = Math.min(one.weight, 0.1);

  const titles = [
    ...about.titles,
    ...meta.candidates.filter(({ field }) => field === 'title').map(({ value }) => value),
  ];
  /** What is said of a thing that no title of the page names may be said of another one. */
  const isNamed = (main: Thing): boolean => titles.length === 0 || namesOf(main).some((name) => isLike(name, titles));
  const mains = [
    { main: jsonLd.main, source: 'json-ld' as const },
    { main: microdata.main, source: 'microdata' as const },
    { main: rdfa.main, source: 'rdfa' as const },
  ].flatMap(({ main, source }) => (main ? [{ main, source, weight: isNamed(main) ? 0.9 : OF_ANOTHER }] : []));
  const structured = mains.flatMap(({ main, source, weight }) => candidatesOf(main, source, weight));
  // "Hand crank for £45", told to machines of a page that calls the thing by its name alone.
  if (best && best.weight >= PLAIN_TITLE && amountsIn(best.value).length === 0)
    for (const one of [...structured, ...meta.candidates])
      if (one.field === 'title' && amountsIn(one.value).length > 0) one.weight = Math.min(one.weight, OF_ANOTHER);
  const state = fromState(harvest.state, { ...about, titles, shown: visible.price >= 0.2 || visible.marks.contact });
  const isProduct = mains.some(({ weight }) => weight > OF_ANOTHER);
  const { particulars, selling, contact, labelled } = visible.marks;
  const isLaidOut = (particulars || selling) && visible.rows >= 2;
  const offers = offersIn({
    page: visible,
    titleAgrees:
      visible.title !== '' && isLike(visible.title, [meta.windowTitle, ...titles.slice(about.titles.length)]),
    told: isProduct ? 'named' : mains.length > 0 || meta.isProduct ? 'product' : null,
    state: state.length > 0,
    // Many a site says so in the head of whatever it shows.
    isArticle:
      jsonLd.isArticle ||
      (meta.isArticle &&
        !isProduct &&
        !(isLaidOut && particulars && contact) &&
        !(visible.price >= PLAIN_PRICE && (contact || isLaidOut)) &&
        !(visible.price >= LIKELY_PRICE && labelled && visible.rows >= MANY_ROWS)),
    isList: jsonLd.isList || microdata.isList,
    // One product whose offers are many, beside cards: the "product" is the category of a list.
    isCategory: visible.cards > 2 && structured.some(({ field, how }) => field === 'price' && how === 'from'),
    counts: COUNTED.test(meta.windowTitle),
    side: Math.max(visible.cards, jsonLd.count, microdata.count, rdfa.count),
  });

  const told = [...structured, ...state, ...meta.candidates];
  const counts = new Map<FieldName, number>();
  const isRead = visible.candidates.some((one) => one.field === 'condition' && tellsCondition(one));
  const candidates = [...told, ...visible.candidates, ...shownWords(told, visible)].filter((candidate) => {
    if (candidate.field === 'condition') {
      const isNew = isNewTerm(candidate);
      // Templates tell machines of all that they show that it is new: less than what people read, and nothing where they don't.
      if (!tellsCondition(candidate) || (isNew && !isRead)) return false;
      if (isNew) candidate.weight = OF_ANOTHER;
    }
    if (candidate.field === 'photo') {
      const address = absolute(candidate.value, harvest.base);
      if (address === null) return false;
      candidate.value = address;
    }
    const count = counts.get(candidate.field) ?? 0;
    counts.set(candidate.field, count + 1);
    return count < EACH_MOST;
  });
  const said = [
    visible.title,
    ...visible.candidates.filter(({ field }) => field === 'description').map(({ value }) => value),
  ];
  const shown = harvest.page.lines.slice(0, OPENING).map(({ text }) => text);
  const language = meta.language ?? guessLanguage(said.join('\n')) ?? guessLanguage(shown.join('\n'));
  const places = structured.filter(({ field }) => field === 'place').map(({ value }) => value);
  const countries = [
    ...meta.countries,
    ...visible.countries,
    ...places.map((value) => countryOfAddress(value) ?? value.slice(value.lastIndexOf(',') + 1).trim()),
  ];
  return { candidates, offers, language, countries, currency: meta.currency };
}

/** What is told of the thing itself is rather its description than the block that a name says is one; a summary is not. */
const SHOWN = 0.8;
const CALLED = 0.7;
const SHOWN_SUMMARY = 0.6;
/** Of most prose of the page a summary may be one paragraph. */
const PROSE = 0.5;

/**
 * The descriptions that machines are told, as the page shows them, unless a block that is called one holds them. A longer
 * one takes the place of its cut beginning.
 */
function shownWords(told: readonly Candidate[], { shown, candidates }: PageFindings): Candidate[] {
  const blocks = candidates.filter(({ field }) => field === 'description');
  const isHeld = (text: string, isSummary: boolean) =>
    blocks.some(
      ({ value, weight }, rank) =>
        (weight >= CALLED || (isSummary && rank === 0 && weight >= PROSE)) && value.includes(text),
    );
  const found = told
    .filter(({ field, source, weight }) => field === 'description' && (source === 'meta' || weight > OF_ANOTHER))
    .flatMap(({ value, source }) => {
      const text = plain(value, true);
      const its = shown(text);
      return its === null || isHeld(its, source === 'meta')
        ? []
        : [{ its, isCut: isCutOff(text), weight: source === 'meta' ? SHOWN_SUMMARY : SHOWN }];
    });
  return found.map(({ its, isCut, weight }) => {
    const longer = isCut ? found.find((other) => other.its !== its && other.its.startsWith(its)) : undefined;
    return { field: 'description', value: longer?.its ?? its, source: 'page', weight };
  });
}

/**
 * True where the head names another thing than the window and the page's heading do. Pages that change without loading
 * another keep their window's title right, since it is seen, and often forget the rest of the head.
 */
function isOfAnother(told: readonly Candidate[], windowTitle: string, shown: string): boolean {
  const title = told.find(({ field, value }) => field === 'title' && value !== windowTitle)?.value;
  const agree = (a: string, b: string) => Math.max(sharedWords(a, b), sharedWords(b, a)) >= SAME_THING;
  return title !== undefined && agree(windowTitle, shown) && !agree(title, shown) && !agree(title, windowTitle);
}

const namesOf = (main: Thing): string[] =>
  [text(main, 'name'), text(things(main, 'itemOffered')[0], 'name')].filter((name) => name !== undefined);

/** Most of the shorter one's words are in the other. */
const isLike = (name: string, titles: readonly string[]): boolean =>
  titles.some((title) => Math.max(sharedWords(name, title), sharedWords(title, name)) >= SAME_NAME);
