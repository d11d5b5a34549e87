import { saleIn } from '../decide/sale-words';
import { rowLabel } from '../page/row-labels';
import { sharedWords } from '../page/shared-words';
import type { Candidate, FieldName, SourceName } from '../types';
import { pricesOfOffers } from './offers';
import { is, shortName, type Thing, text, texts, things } from './things';

/** schema.org properties that make a labelled row, with the label printed. */
const ROWS: [property: string, label: string][] = [
  ['brand', 'Brand'],
  ['manufacturer', 'Manufacturer'],
  ['model', 'Model'],
  ['color', 'Color'],
  ['material', 'Material'],
  ['weight', 'Weight'],
  ['width', 'Width'],
  ['height', 'Height'],
  ['depth', 'Depth'],
  ['size', 'Size'],
  ['productionDate', 'Production date'],
  ['countryOfAssembly', 'Country of assembly'],
  ['countryOfOrigin', 'Country of origin'],
];

/** schema.org units of measure by their UN/CEFACT common codes. */
const UNITS = new Map(
  Object.entries({
    KGM: 'kg',
    GRM: 'g',
    LBR: 'lb',
    ONZ: 'oz',
    CMT: 'cm',
    MMT: 'mm',
    MTR: 'm',
    INH: 'in',
    FOT: 'ft',
  }),
);

/** The main product (or offer) of a page as candidates; `weight` is what the source is worth. */
export function candidatesOf(main: Thing, source: SourceName, weight: number): Candidate[] {
  const found: Candidate[] = [];
  const add = (field: FieldName, value: string | undefined, worth = weight) => {
    if (value !== undefined && value.trim() !== '') found.push({ field, value, source, weight: worth });
  };

  const isOffer = is(main, /Offer(?:ing)?$/);
  const product = isOffer ? (things(main, 'itemOffered')[0] ?? main) : main;
  const offers = isOffer ? [main] : things(main, 'offers').concat(things(main, 'offerDetails'));
  // An offer may hold offers of its own (AggregateOffer); what is said of it may stand on either.
  const inner = offers.flatMap((offer) => things(offer, 'offers')).slice(0, 30);
  const all = [main, product, ...offers, ...inner].filter((thing, index, list) => list.indexOf(thing) === index);

  for (const name of [...texts(product, 'name'), ...(product === main ? [] : texts(main, 'name'))].slice(0, 3))
    add('title', name);
  // A page may call it by its maker's name too; the name alone is what is told.
  const [maker] = product.get('brand').map(worded);
  const name = text(product, 'name');
  if (maker && name && sharedWords(maker, name) < 1) add('title', `${maker} ${name}`);
  for (const words of [...texts(product, 'description'), ...(product === main ? [] : texts(main, 'description'))].slice(
    0,
    2,
  ))
    add('description', words);
  found.push(...pricesOfOffers(offers, source, weight));

  for (const thing of all) {
    for (const serial of texts(thing, 'serialNumber').slice(0, 5)) add('serial', serial);
    for (const state of [...thing.get('itemCondition'), ...thing.get('condition')].slice(0, 2))
      add('condition', conditionName(state), isTerm(state) ? Math.min(weight, TERM) : weight);
    for (const state of thing.get('availability').slice(0, 2)) {
      const term = typeof state === 'string' ? state : (state.id ?? '');
      if (saleIn(term)) add('sale', term, weight - 0.1);
    }
    add('listedDate', text(thing, 'datePosted', 'datePublished', 'availabilityStarts', 'validFrom'), weight - 0.15);
    for (const at of ['availableAtOrFrom', 'location', 'contentLocation', 'areaServed', 'address'])
      add('place', placeName(thing.get(at)[0]), weight - (at === 'areaServed' ? 0.3 : 0.05));
    for (const seller of [...things(thing, 'seller'), ...things(thing, 'offeredBy')].slice(0, 3)) {
      // A site names itself as the organisation that sells what its members do.
      if (is(seller, /^Person$/)) add('seller', 'private', Math.min(weight, 0.6));
      add('place', placeName(things(seller, 'address')[0] ?? things(seller, 'location')[0]), weight - 0.2);
    }
    for (const property of ['image', 'photo', 'primaryImageOfPage', 'depiction'])
      for (const image of thing.get(property).slice(0, 40)) {
        add('photo', typeof image === 'string' ? image : (text(image, 'contentUrl', 'url') ?? image.id ?? undefined));
      }
  }
  for (const [property, label] of ROWS) {
    const values = product.get(property).slice(0, 3).map(worded).filter(Boolean);
    if (values.length > 0) add('details', `${label}: ${values.join(', ')}`, weight - 0.2);
  }
  for (const row of things(product, 'additionalProperty').slice(0, 60)) {
    const label = text(row, 'name');
    const value = worded(row);
    if (!label || !value) continue;
    const field = rowLabel(label);
    if (field === 'price' || field === 'postage' || field === 'skip') continue;
    if (field) add(field, value, weight - 0.05);
    else add('details', `${label}: ${value}`, weight - 0.1);
  }
  return found;
}

/** A value as a person would write it: a quantity with its unit, a thing by its name. */
function worded(value: string | Thing): string {
  if (typeof value === 'string') return value;
  const unit = text(value, 'unitText') ?? UNITS.get(text(value, 'unitCode') ?? '') ?? '';
  const low = text(value, 'value') ?? text(value, 'minValue');
  const high = text(value, 'value') === undefined ? text(value, 'maxValue') : undefined;
  if (low !== undefined)
    return `${low}${high !== undefined && high !== low ? `-${high}` : ''}${unit ? ` ${unit}` : ''}`;
  return text(value, 'name') ?? '';
}

/** A term of the vocabulary: coarser than the words that people read on the page. */
const TERM = 0.5;
const isTerm = (state: string | Thing): boolean =>
  /^\S*(?:New|Used|Refurbished|Damaged)Condition\/?$/.test(
    (typeof state === 'string' ? state : (text(state, 'name') ?? state.id ?? '')).trim(),
  );

/** "https://schema.org/UsedCondition" as "Used"; other words as they are. */
function conditionName(state: string | Thing): string {
  const words = typeof state === 'string' ? state : (text(state, 'name') ?? state.id ?? '');
  if (!/Condition\/?$/.test(words) || /\s/.test(words.trim())) return words;
  return shortName(words).replace(/Condition$/, '');
}

function placeName(place: string | Thing | undefined): string | undefined {
  if (place === undefined || typeof place === 'string') return place;
  const address = place.get('address')[0] ?? place;
  if (typeof address === 'string') return address;
  const country = address.get('addressCountry')[0];
  const parts = [
    text(address, 'addressLocality'),
    text(address, 'addressRegion'),
    typeof country === 'string' ? country : text(country, 'name'),
  ].filter((part) => part !== undefined);
  const code = text(address, 'postalCode');
  const named = code ? [`${code}${parts.length > 0 ? ` ${parts[0]}` : ''}`, ...parts.slice(1)] : parts;
  return named.length > 0 ? named.join(', ') : text(place, 'name');
}
