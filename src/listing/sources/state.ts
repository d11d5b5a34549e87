import { rowLabel } from '../page/row-labels';
import { sharedWords } from '../page/shared-words';
import { code } from '../structured/offers';
import type { Candidate, FieldName, StateObject } from '../types';

type Plain = { [key: string]: unknown };
const isPlain = (value: unknown): value is Plain =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Keys by what they hold, best first, without case and marks. Common usage, from memory. */
const KEYS = {
  title: /^(?:(?:ad|listing|item|product)?(?:title|headline|subject)|titel|titre|titulo|titolo|name)$/,
  description:
    /^(?:(?:ad|listing|item|product)?(?:description|body|bodytext|text|descriptiontext|plaintext)|beschreibung|descripcion|descrizione|omschrijving)$/,
  price:
    /^(?:(?:current|sale|final|asking|buynow|item|listing)?price(?:incents|cents|amount|value)?|amount|preis|prix|precio|prezzo|prijs)$/,
  currency: /^(?:price)?currency(?:code|iso)?$/,
  condition: /^(?:item)?(?:condition|state|zustand|etat)(?:label|name|text)?$/,
  place: /^(?:location|place|address|city|cityname|locality|town|ort|lieu|plaats)(?:label|name|text)?$/,
  sale: /^(?:status|state|availability|salestatus|listingstatus|itemstatus)$/,
  seller: /^(?:sellertype|vendortype|ownertype|accounttype|advertisertype|postertype|usertype)$/,
  listedDate: /^(?:created|published|posted|listed|publication|creation|list|firstpublication)(?:at|on|date|time)?$/,
  photo: /^(?:images|photos|pictures|image|photo|media|gallery|imageurls|photourls)$/,
  rows: /^(?:attributes|properties|specs|specifications|details|features|params|parameters|criteria|facts)$/,
} as const;

/** A title that the page or the window says too; less is another thing's. */
const SAME_TITLE = 0.6;

/**
 * The object among those in the page's scripts that is the page's own advert, as candidates: the one whose name the
 * window or the page says, or whose number the address has; else the only one that doesn't stand in a list, where the
 * page shows nothing (`shown`) that could be an advert.
 */
export function fromState(
  objects: readonly StateObject[],
  page: { url: string; titles: string[]; shown: boolean },
): Candidate[] {
  const read: { value: Plain; siblings: number; score: number; candidates: Candidate[] }[] = [];
  for (const { json, siblings } of objects) {
    const value = parsed(json);
    if (!isPlain(value)) continue;
    const candidates = candidatesOf(value);
    const fields = new Set(candidates.map(({ field }) => field));
    // A name with nothing but a price is a card or an option; with nothing but words, an article.
    if (!fields.has('title') || fields.size < 3) continue;
    const title = candidates.find(({ field }) => field === 'title')!.value;
    const likeness = Math.max(
      0,
      ...page.titles.map((one) => Math.min(sharedWords(one, title), sharedWords(title, one))),
    );
    const id = value.id ?? value.adId ?? value.listingId ?? value.itemId;
    const isHere = /^[\w-]{4,}$/.test(String(id ?? '')) && page.url.includes(String(id));
    const named = likeness >= SAME_TITLE ? 2 : 0;
    read.push({
      value,
      siblings,
      candidates,
      score: named + (isHere ? 2 : 0) + (siblings > 1 ? -1 : 0) + fields.size / 10,
    });
  }
  // A page that goes on without loading another leaves the first one's data behind.
  const possible = page.shown ? read.filter(({ score }) => score >= 1) : read;
  const [best, second] = possible.sort((a, b) => b.score - a.score);
  if (!best || best.score < 0.3) return [];
  const isAlone = read.filter(({ siblings }) => siblings === 1).length === 1;
  if (best.score < 1.5 && !(isAlone && best.siblings === 1) && second && second.score > best.score - 0.1) return [];
  return best.candidates;
}

function candidatesOf(value: Plain): Candidate[] {
  const found: Candidate[] = [];
  const add = (field: FieldName, text: string | null, weight: number) => {
    if (text !== null && text.trim() !== '' && !found.some((one) => one.field === field && one.value === text))
      found.push({ field, value: text, source: 'state', weight });
  };
  const entries = Object.entries(value).map(([key, held]): [string, unknown] => [
    key.toLowerCase().replace(/[^a-z]/g, ''),
    held,
  ]);
  const all = (keys: RegExp) => entries.filter(([key]) => keys.test(key));
  for (const [, held] of all(KEYS.title).slice(0, 1)) add('title', typeof held === 'string' ? held : null, 0.6);
  for (const [, held] of all(KEYS.description)) {
    const lines = Array.isArray(held) && held.every((one) => typeof one === 'string') ? held.join('\n') : held;
    add('description', typeof lines === 'string' ? lines : null, 0.6);
  }
  for (const [key, held] of all(KEYS.price)) {
    const its = isPlain(held) ? held : {};
    const amount = isPlain(held) ? (its.amount ?? its.value ?? its.price ?? its.raw) : held;
    const isMinor = /cents/.test(key) || Object.keys(its).some((name) => /cents|minor/i.test(name));
    const minor = its.amountInCents ?? its.cents ?? its.amountCents ?? (isMinor ? amount : undefined);
    const written = minor === undefined ? amount : cents(minor);
    if ((typeof written !== 'number' && typeof written !== 'string') || !/\d/.test(String(written))) continue;
    const stated = its.currency ?? its.currencyCode ?? its.code ?? all(KEYS.currency)[0]?.[1];
    found.push({
      field: 'price',
      value: String(written),
      source: 'state',
      weight: 0.65,
      currency: typeof stated === 'string' ? code(stated) : null,
    });
    break;
  }
  for (const [, held] of all(KEYS.condition)) add('condition', words(held), 0.6);
  for (const [, held] of all(KEYS.place)) add('place', placeIn(held), 0.55);
  for (const [, held] of all(KEYS.sale)) add('sale', words(held), 0.5);
  for (const [, held] of all(KEYS.seller)) add('seller', words(held), 0.5);
  for (const [, held] of all(KEYS.listedDate)) add('listedDate', typeof held === 'string' ? held : null, 0.5);
  for (const [, held] of all(KEYS.photo))
    for (const one of Array.isArray(held) ? held : [held]) add('photo', addressIn(one), 0.55);
  for (const [, held] of all(KEYS.rows)) {
    for (const row of Array.isArray(held) ? held : []) {
      if (!isPlain(row)) continue;
      const label = words(row.label ?? row.name ?? row.key ?? row.title);
      const its = words(row.value ?? row.text ?? row.values);
      if (!label || !its) continue;
      const field = rowLabel(label);
      if (field === 'price' || field === 'postage' || field === 'skip') continue;
      if (field) add(field, its, 0.6);
      else add('details', `${label}: ${its}`, 0.5);
    }
  }
  return found;
}

const cents = (held: unknown): string | undefined => {
  const digits = String(held);
  return /^\d{1,12}$/.test(digits)
    ? `${digits.padStart(3, '0').slice(0, -2)}.${digits.padStart(3, '0').slice(-2)}`
    : undefined;
};

/** A text, or the text of what has a name. */
function words(held: unknown): string | null {
  if (typeof held === 'string') return held;
  if (typeof held === 'number') return String(held);
  if (Array.isArray(held)) return held.map(words).filter(Boolean).join(', ') || null;
  return isPlain(held) ? words(held.label ?? held.name ?? held.text ?? held.value ?? null) : null;
}

function placeIn(held: unknown): string | null {
  if (!isPlain(held)) return words(held);
  const of = (...keys: string[]) => keys.map((key) => words(held[key])).find(Boolean);
  return of('city', 'cityName', 'locality', 'town', 'name', 'label', 'addressLocality') ?? null;
}

function addressIn(held: unknown): string | null {
  if (isPlain(held)) return addressIn(held.url ?? held.src ?? held.large ?? held.original ?? held.uri ?? null);
  return typeof held === 'string' && /^(?:https?:)?\/|\.(?:jpe?g|png|webp|avif)/i.test(held) ? held : null;
}

function parsed(json: string): unknown {
  try {
    return JSON.parse(json);
  } catch {
    return null;
  }
}
