import { atOnce, inSlices, type Pace } from './slices';
import { cutTo, tidyLines } from './tidy';
import type { Harvest, Item } from './types';
import { absolute } from './visit/addresses';
import { itemsOf } from './visit/items';
import { bytesOf } from './visit/json-size';
import { seenLines } from './visit/lines';
import { picturesOf } from './visit/pictures';
import { rdfaOf } from './visit/rdfa';
import { lookAt, type Sight } from './visit/sight';
import { stateOf } from './visit/state';
import { trimmed } from './visit/trim';
import { walk } from './visit/walk';

/** Bytes as JSON for each part; together under 400 kB. */
const PAGE_MOST = 190_000;
const JSON_LD_MOST = 70_000;
/** Microdata and RDFa together. */
const ITEMS_MOST = 55_000;
const STATE_MOST = 20_000;
const METAS_MOST = 25_000;
const PICTURES_MOST = 25_000;
const TEXT_MOST = 20_000;
const TIMES_MOST = 100;
/** Nodes read again for the texts of microdata values, one and all: values may lie inside each other. */
const VALUE_NODES_EACH = 20_000;
const VALUE_NODES_MOST = 200_000;

interface Options {
  /** The page's address where the document does not know it. */
  url?: string;
}

/**
 * Reads what a page says of what is for sale on it. Runs in the page: one walk over its nodes, then questions to the
 * layout where there is one; changes nothing, loads nothing, recurses nowhere. Judges nothing: that is for `settle`.
 * Answers plain JSON under 400 kB. Never throws.
 */
export function collect(document: Document, options: Options = {}): Harvest {
  try {
    return visit(document, options.url);
  } catch {
    // Whatever a page did to its own nodes: it said nothing that can be read.
    return empty(options.url ?? '');
  }
}

/** The same, with the page's own work let through between slices. What changes meanwhile is read as it then stands. */
export async function collectInSlices(document: Document, options: Options & Partial<Pace> = {}): Promise<Harvest> {
  try {
    return await inSlices(visiting(document, options.url), options);
  } catch {
    return empty(options.url ?? '');
  }
}

const empty = (url: string): Harvest => ({
  schema: 1,
  url,
  base: url,
  language: null,
  title: '',
  metas: [],
  jsonLd: [],
  items: [],
  rdfa: [],
  state: [],
  page: { lines: [], boxes: [], pictures: [], times: [] },
  unread: [],
  cut: false,
});

/** The same without a net: throws where this reader is wrong. */
export const visit = (document: Document, url?: string): Harvest => atOnce(visiting(document, url));

/** The same in steps, between which anything else may be done. */
export const visiting = (document: Document, url?: string): Generator<void, Harvest> => seeing(lookAt(document, url));

/** The same by whatever way of looking at a page. */
export function* seeing(sight: Sight): Generator<void, Harvest> {
  const harvest = empty(cutTo(sight.address, 2000));
  const page = yield* walk(sight);
  harvest.cut = page.cut;
  readHead(harvest, sight, page.heads);

  const fits = budget(JSON_LD_MOST, harvest);
  for (const script of page.linkedData) {
    // White space between the tokens of JSON says nothing, and line breaks inside its strings are faults.
    const block = sight.textContent(script).replace(/\s+/g, ' ').trim();
    if (fits(block)) harvest.jsonLd.push(block);
    yield;
  }

  let left = VALUE_NODES_MOST;
  const seenText = function* (element: Element): Generator<void, string> {
    const inside = yield* walk(sight, element, Math.min(left, VALUE_NODES_EACH));
    left -= inside.nodes;
    const { lines } = yield* seenLines(sight, inside.lines);
    const text = lines.map((line) => line.text).join('\n');
    // A value that is hidden as a whole is meant for machines, and counts.
    return cutTo(text || (left > 0 ? tidyLines(sight.textContent(element)) : ''), TEXT_MOST);
  };
  const fitsItem = budget(ITEMS_MOST, harvest);
  harvest.items = withinBudget(yield* itemsOf(sight, page, seenText), fitsItem);
  const marks = yield* rdfaOf(sight, seenText);
  const end = marks.findIndex((mark) => !fitsItem(mark));
  harvest.rdfa = end < 0 ? marks : marks.slice(0, end);

  const fitsState = budget(STATE_MOST, harvest);
  harvest.state = (yield* stateOf(textsOf(sight, page.scripts, harvest))).filter(fitsState);
  harvest.unread = page.unread.map((address) => cutTo(address, 500));

  const { lines, origins } = yield* seenLines(sight, page.lines);
  /** Index of the first seen line that came from this stretch or a later one. */
  const first = new Uint32Array(page.lines.length + 1).fill(lines.length);
  for (let index = lines.length - 1; index >= 0; index--) first[origins[index]!] = index;
  for (let index = page.lines.length - 1; index >= 0; index--)
    first[index] = Math.min(first[index]!, first[index + 1]!);
  const moved = (at: number) => first[at]!;

  const times = [];
  for (const { element, line } of page.times.slice(0, TIMES_MOST)) {
    const value = sight.attribute(element, 'datetime');
    if (value && value.length < 50 && sight.shown(element)) times.push({ value, line: moved(line) });
  }
  const fitsPicture = budget(PICTURES_MOST, harvest);
  const pictures = (yield* picturesOf(sight, page.images))
    .map((picture) => ({ ...picture, line: moved(picture.line) }))
    .filter(fitsPicture);
  const { boxes } = page;
  for (const box of boxes) {
    box.from = moved(box.from);
    box.to = moved(box.to);
  }
  const within = yield* trimmed({ lines, boxes, pictures, times }, page.title < 0 ? 0 : moved(page.title), PAGE_MOST);
  harvest.page = within.page;
  harvest.cut ||= within.cut;
  return harvest;
}

/** "currencyCode":"SEK" and its like, of the page as a whole; not of what an advertiser bids ("adServerCurrency"). */
const CURRENCY = /[^r].urrency\w{0,9}["'\\:= ]{2,9}[A-Z]{3}\b/g;

/** The texts of scripts; the currencies that they name are put with the metas, of each script the first few. */
function* textsOf(sight: Sight, elements: Element[], harvest: Harvest): Generator<string> {
  for (const element of elements) {
    const text = sight.textContent(element);
    for (const named of (text.match(CURRENCY) ?? []).slice(0, 3)) harvest.metas.push(['currency', named]);
    yield text;
  }
}

/** Title, meta elements, canonical address, base and language. */
function readHead(harvest: Harvest, sight: Sight, heads: Element[]): void {
  const fits = budget(METAS_MOST, harvest);
  let base: string | null = null;
  for (const element of heads) {
    const tag = sight.tag(element);
    const get = (name: string) => sight.attribute(element, name);
    if (tag === 'title')
      harvest.title ||= cutTo(tidyLines(sight.textContent(element).slice(0, TEXT_MOST)).replaceAll('\n', ' '), 1000);
    else if (tag === 'base') base ??= get('href');
    else {
      const isCanonical = tag === 'link' && /\bcanonical\b/i.test(get('rel') ?? '');
      const property = get('property');
      // A property without a prefix is RDFa's, and belongs to a thing on the page.
      const told = property?.includes(':') ? property : get('name');
      const name = isCanonical ? 'canonical' : tag === 'meta' ? told : null;
      if (!name) continue;
      const content = tidyLines(cutTo(get(isCanonical ? 'href' : 'content') ?? '', TEXT_MOST));
      const meta: [string, string] = [name.trim().toLowerCase(), content];
      if (content && fits(meta)) harvest.metas.push(meta);
    }
  }
  sight.base = (base && absolute(base, sight.base)) ?? sight.base;
  harvest.base = cutTo(sight.base, 2000);
  harvest.language = cutTo((sight.root && sight.attribute(sight.root, 'lang')) ?? '', 40) || null;
}

/** Says of each value whether there is room for it. */
function budget(bytes: number, harvest: Harvest): (value: unknown) => boolean {
  let left = bytes;
  return (value) => {
    const size = bytesOf(value);
    const fits = size <= left;
    if (fits) left -= size;
    else harvest.cut = true;
    return fits;
  };
}

/** Items keep their places among each other, so they are cut where the room ends. */
function withinBudget(items: Item[], fits: (item: Item) => boolean): Item[] {
  const end = items.findIndex((item) => !fits(item));
  if (end < 0) return items;
  // References to what was cut are dropped with it.
  return items.slice(0, end).map((item) => ({
    ...item,
    properties: item.properties.filter(([, value]) => typeof value === 'string' || value < end),
  }));
}
