import { counted } from './words';

/** What the panel says of the price. */
export const pricePart = {
  heading: 'Price',
  hows: {
    asking: (amount: string) => `The advert asks ${amount}.`,
    bid: (amount: string) => `The highest bid so far is ${amount}; a bid is not yet a price.`,
    sold: (amount: string) => `The page says it sold for ${amount}.`,
    from: (amount: string) => `The advert says “from” ${amount}; what this one costs is not said.`,
  },
  none: 'The advert names no price.',
  keep: 'Keep this price among your own',
  standings: {
    below: 'That is less than such a machine usually costs. Ask why.',
    'low-side': 'That is at the lower side of what such a machine usually costs.',
    within: 'That is about what such a machine usually costs.',
    'high-side': 'That is at the upper side of what such a machine usually costs.',
    above: 'That is more than such a machine usually costs.',
    'not-comparable': 'It can’t be compared with the prices known to the packs.',
    'no-band': 'The packs know no prices for this one.',
  },
  band: (low: string, high: string) => `Eight in ten cost between ${low} and ${high}.`,
  numbers: {
    middle: 'Middle of the known prices',
    ratio: 'This price divided by the middle',
    share: 'Share of such machines that cost no more than this',
    observations: 'Single prices counted',
    effective: 'Weight of all that is known, counted in prices',
  },
  ofHundred: (n: number) => `about ${n} in 100`,
  askedIsNotPaid: 'What is asked is not what is paid: in a thin market people often ask for more than they get.',
} as const;

/** What it says of the serial number. */
export const serialPart = {
  heading: 'Serial number',
  written: 'As the advert writes it:',
  verdicts: {
    fits: 'The number fits what the advert says.',
    'another-model': 'By the tables this number belongs to another model.',
    'another-year': 'By the tables this number belongs to another year.',
    unknown: 'This number is in none of the tables that the packs hold. Tables have gaps.',
    misread: 'This number is in no table as written, but a number that is easily confused with it is.',
    'bad-form': 'No maker known to the packs wrote its numbers in this form.',
    none: 'The advert shows no serial number. It is worth asking for: it dates a machine better than most words.',
  },
  runsCaption: 'Numbers allotted together that hold this one',
  numbers: 'Numbers',
  model: 'Model',
  year: 'Year',
  yearUnknown: 'not known',
  place: 'Made in',
  source: 'Source',
  suggestions: 'Perhaps it was meant:',
  suggestion: (number: string, models: string, year: number | null) =>
    `${number}: ${models}${year === null ? '' : `, ${year}`}`,
  yearIsAllotment: 'The year is that of the block of numbers, not of the sale.',
  others: 'Other numbers in the advert',
  folded: (number: string, verdict: string) => `${number}: ${verdict}`,
  short: {
    fits: 'fits what the advert says',
    'another-model': 'another model’s, by the tables',
    'another-year': 'of another year, by the tables',
    unknown: 'in none of the tables',
    misread: 'in no table as written',
    'bad-form': 'not of a known form',
    none: 'None is shown. It is worth asking for.',
  },
} as const;

/** What it says of what was read on the page. */
export const readPart = {
  heading: 'What was read on the page',
  intro: 'If something is read wrongly here, the rest is wrong too.',
  unread: (address: string) => `Part of this page, from ${address}, couldn’t be read: it belongs to another site.`,
  fields: {
    title: 'Title',
    description: 'Description',
    details: 'Details',
    price: 'Price',
    serial: 'Serial number',
    condition: 'Condition',
    place: 'Place',
    listedDate: 'Listed on',
    sale: 'Sale',
    seller: 'Seller',
    photo: 'Photos',
  },
  sources: {
    'json-ld': 'from the page’s embedded data',
    microdata: 'from marks in the page’s text',
    rdfa: 'from marks in the page’s text (RDFa)',
    state: 'from data inside the page’s scripts',
    meta: 'from the page’s head',
    page: 'from the visible page',
    draft: 'from the draft',
    user: 'typed by you',
  },
  yours: 'your word',
  confidence: (share: number) => `${Math.round(share * 100)} in 100 sure`,
  alternatives: 'elsewhere on the page:',
  sales: { sold: 'said to be sold', reserved: 'said to be reserved' },
  sellers: { private: 'private', trade: 'in the trade' },
  photos: (n: number) => `${n === 0 ? 'no photos' : counted(n, 'photo', 'photos')}, not loaded`,
  none: 'nothing found',
} as const;
