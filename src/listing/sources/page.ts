import { fold } from '../../text/fold';
import { putAdvertFirst, raiseHead } from '../page/advert-first';
import { advertHeadOf } from '../page/advert-head';
import { unstruck } from '../page/amounts-in-lines';
import { askedInWords } from '../page/asked-in-words';
import { cardsOf } from '../page/cards';
import { USED } from '../page/condition-words';
import { countryOfAddress } from '../page/country';
import { type Block, descriptionsOf, LABELLED } from '../page/description';
import { type Marks, marksOf } from '../page/marks';
import {
  headedParticulars,
  lastPart,
  MAP,
  particularsOf,
  placeInHeading,
  placesToldOf,
  timesOf,
  writtenDates,
} from '../page/particulars';
import { photosOf } from '../page/photos';
import { type PagePrice, pricesOf } from '../page/prices';
import { isSentence as isTold } from '../page/prose';
import { isOnly, type Reading, range, readingOf } from '../page/reading';
import { rowLabel } from '../page/row-labels';
import { rowsOf } from '../page/rows';
import { saleOf } from '../page/sale';
import { type Heading, isDated, titlesOf } from '../page/title';
import { supportOf, type TitleEvidence } from '../page/title-evidence';
import { withoutState } from '../page/title-state';
import { shownOf } from '../page/told-words';
import { AWAY, zonesOf } from '../page/zones';
import { type Candidate, CONTROL, type PageText } from '../types';

/** From this weight on a price stands plainly. */
const PLAIN_PRICE = 0.5;
const TITLES_MOST = 8;
/** Longer lines tell of places, and are at none. */
const ADDRESS_MOST = 120;
/** What stands in a row of its own. */
const LEAST_LABELLED = 0.7;
/** From this weight on it is the advert that is said to be sold. */
const SALE_SAID = 0.6;

export interface PageFindings {
  candidates: Candidate[];
  /** Things for sale side by side. */
  cards: number;
  /** The page's own title, or "". */
  title: string;
  /** What names the site, or a part of it, where it might be taken for a title. */
  siteNames: string[];
  /** Weight of the page's own price, 0 where there is none outside the cards. */
  price: number;
  marks: Marks;
  /** The title heads a part of the page in which the seller's words stand together with a photograph or a price. */
  isApart: boolean;
  /** Characters of the seller's own words. */
  words: number;
  /** Labelled rows of known and of other labels. */
  rows: number;
  photos: number;
  /** Countries that the addresses in its own part are written as in. */
  countries: string[];
  /** Words that machines are told, as they are shown, with what belongs to them; null where they aren't. */
  shown: (told: string) => string | null;
}

/** A short line by which a seller labels something among other words: "Condition: rusty but whole". */
const PLAIN_ROW = /^[^:]{3,30}:\s[^:]{2,60}$/;
const OF_THING: ReadonlySet<string> = new Set(['condition', 'place']);
const isKnown = (text: string): boolean => OF_THING.has(rowLabel(text.slice(0, text.indexOf(':'))) ?? '');

/** What the head says that helps to read the page. */
export interface Head {
  /** The window's title without the site's name, and that name; "" where not known. */
  windowTitle: string;
  siteName: string;
  /** The titles that machines are told in the head. */
  titles: readonly string[];
  /** The window's whole title and the summaries, one after the other. */
  told: string;
  /** Words of the page's address after its host. */
  slug: string;
  language: string | null;
}

/** A title of somebody who seeks something: what its words name is no price. The languages of the labels. */
const WANTED =
  /^\W*(?:wtb|wanted|looking for|iso|suche|gesucht|cherche|recherche|gezocht|zoek|cerco|compro|busco|sokes|kopes|kupie|koupim)(?!\w)/;

/** What a person sees on the page, as candidates for each field. */
export function fromPage(page: PageText, head: Head): PageFindings {
  const { windowTitle, siteName } = head;
  const reading = readingOf(page);
  reading.zones = zonesOf(reading);
  reading.cards = cardsOf(reading, windowTitle);
  const first = titlesOf(reading, windowTitle, siteName, head.told.split('\n')[0]!.trim(), head.titles);
  reading.titleLine = first[0]?.line ?? -1;
  let blocks = descriptionsOf(reading);
  let prices = pricesOf(reading);
  putAdvertFirst(reading, blocks, prices);
  const titles = weighed(reading, first, { prices, blocks, head });
  // Known by what stands around it, the title may be another line than its form alone let expect.
  if (titles[0] && titles[0].line !== reading.titleLine) {
    reading.titleLine = titles[0].line;
    blocks = descriptionsOf(reading);
    prices = pricesOf(reading);
    putAdvertFirst(reading, blocks, prices);
  }

  const candidates: Candidate[] = titles.map(({ text, weight }) => ({
    field: 'title',
    value: text,
    source: 'page',
    weight,
  }));
  for (const { text, weight } of blocks) candidates.push({ field: 'description', value: text, source: 'page', weight });
  const part = advertHeadOf(reading, blocks[0], prices);
  // Words of asking before a stray amount somewhere beside the advert.
  if (!prices.some(({ weight }) => weight >= PLAIN_PRICE) && !WANTED.test(fold(titles[0]?.text ?? windowTitle).text)) {
    const around = range(part?.from ?? 0, part?.to ?? 0).filter(
      (line) => reading.zones[line] !== AWAY && !reading.cards.lines.has(line) && isTold(reading.lines[line]!),
    );
    const asked = (its: readonly number[]) =>
      askedInWords(its.map((line) => unstruck(reading.lines[line]!)).join('\n'), { language: head.language });
    const told = asked(blocks[0]?.lines ?? []) ?? asked(around);
    if (told)
      prices = [
        ...prices,
        { ...told, line: -1, weight: 0.44, starting: false, asked: true, before: '', isKnown: false, currency: null },
      ].sort((a, b) => b.weight - a.weight);
  }
  for (const { text, weight, how, currency } of prices) {
    const told = { ...(how ? { how } : {}), ...(currency ? { currency } : {}) };
    candidates.push({ field: 'price', value: text, source: 'page', weight, ...told });
  }

  const own = new Set(blocks[0]?.lines);
  const isRowOfWords = (line: number) => PLAIN_ROW.test(reading.lines[line]!.text);
  const isWords = (line: number) => {
    const { text } = reading.lines[line]!;
    return own.has(line) && !(isRowOfWords(line) ? isKnown(text) : OF_THING.has(rowLabel(text) ?? ''));
  };
  const rows = rowsOf(reading, (line) => isWords(line) || line === reading.titleLine);
  for (const { label, value } of rows) {
    const field = rowLabel(label);
    // A price row was weighed among the prices already.
    if (field === 'price' || field === 'postage' || field === 'skip') continue;
    if (field === 'place' && MAP.test(fold(value).text)) continue;
    // "State: NB" is where it is.
    if (field === 'condition' && /^[A-Z]{2}$/.test(value) && fold(label).text === 'state') continue;
    if (!field && USED.test(fold(value).text))
      candidates.push({ field: 'condition', value, source: 'page', weight: LEAST_LABELLED });
    if (field) candidates.push({ field, value, source: 'page', weight: 0.85 });
    else candidates.push({ field: 'details', value: `${label}: ${value}`, source: 'page', weight: 0.7 });
  }
  candidates.push(
    ...particularsOf(reading, {
      title: titles[0]?.text || windowTitle,
      siteName,
      windowTitle: head.told.split('\n')[0] ?? '',
      told: head.told,
      description: blocks[0]?.text ?? '',
      language: head.language,
    }),
    ...saleOf(reading, rows),
    ...placeInHeading(reading),
    ...headedParticulars(reading),
    ...placesToldOf(reading),
    ...timesOf(reading),
    ...writtenDates(reading, head.language),
  );
  for (const value of photosOf(reading, titles[0]?.text || windowTitle, [
    siteName,
    lastPart(head.told.split('\n')[0] ?? ''),
  ]))
    candidates.push({ field: 'photo', value, source: 'page', weight: 0.6 });

  const title = titles[0]?.text ?? '';
  return {
    candidates,
    cards: reading.cards.count,
    title,
    siteNames: titles.filter(({ isSite }) => isSite).map(({ text }) => text),
    price: prices[0]?.weight ?? 0,
    marks: {
      ...marksOf(reading, rows, [title || windowTitle, first[0]?.text ?? ''], blocks, windowTitle),
      sale: candidates.some(({ field, weight }) => field === 'sale' && weight >= SALE_SAID),
      asks: prices.some(({ asked, line }) => asked && line < 0),
      labelled: blocks.some(({ called }) => called >= LABELLED),
    },
    isApart: part !== null && part.line === reading.titleLine,
    words: blocks[0]?.text.length ?? 0,
    rows: rows.length,
    photos: candidates.filter(({ field }) => field === 'photo').length,
    countries: countriesOf(reading),
    shown: (told) => shownOf(reading, told),
  };
}

const countriesOf = ({ lines, zones, cards }: Reading): string[] =>
  lines.flatMap(({ text }, line) =>
    text.length < ADDRESS_MOST && zones[line] !== AWAY && !cards.lines.has(line) ? (countryOfAddress(text) ?? []) : [],
  );

/** Titles by all that speaks for them, best first. */
function weighed(
  reading: Reading,
  found: Heading[],
  { prices, blocks, head: { slug, windowTitle, titles: told } }: { prices: PagePrice[]; blocks: Block[]; head: Head },
): Heading[] {
  const plain = prices.find(({ weight }) => weight >= PLAIN_PRICE)?.line ?? null;
  const possible = [...found, ...aboveThePrice(reading, plain)];
  const evidence: TitleEvidence = {
    pictures: reading.pictures,
    description: blocks[0]?.text ?? '',
    slug,
    price: plain ?? -1,
    words: blocks[0]?.lines[0] ?? -1,
    titles: possible.map(({ line }) => line),
  };
  const weighed = possible
    .map((one) => {
      const sum = one.weight + supportOf(reading, one.text, one.line, evidence);
      return { ...one, weight: Math.max(0.05, Math.min(0.95, sum)) };
    })
    .sort((a, b) => b.weight - a.weight);
  const head = advertHeadOf(reading, blocks[0], prices);
  if (head) raiseHead(weighed, head, evidence, { reading, windowTitle, told, prices });
  return weighed.sort((a, b) => b.weight - a.weight).slice(0, TITLES_MOST);
}

/** A cell behind another of its row. */
const isValue = (lines: Reading['lines'], row: Reading['row'], line: number): boolean => {
  const before = lines[line - 1];
  return (
    before !== undefined &&
    before.box !== lines[line]!.box &&
    row[before.box]! >= 0 &&
    row[before.box] === row[lines[line]!.box]
  );
};

/** The line of some words right over a price, whatever it is set in. */
function aboveThePrice({ lines, zones, cards, row }: Reading, price: number | null): Heading[] {
  for (let line = (price ?? 0) - 1; line >= 0 && line >= (price ?? 0) - 3; line--) {
    const { text } = lines[line]!;
    const isTitle =
      text.length <= 150 && text.split(' ').length >= 3 && !/[.:]$/.test(text) && !/\d[.,]\d\d\b/.test(text);
    if (
      isTitle &&
      !isDated(text) &&
      !rowLabel(lines[line - 1]?.text ?? '') &&
      !isValue(lines, row, line) &&
      zones[line] !== AWAY &&
      !cards.lines.has(line) &&
      !isOnly(lines[line]!, CONTROL)
    )
      return [{ text: withoutState(text), line, weight: 0.3 }];
  }
  return [];
}
