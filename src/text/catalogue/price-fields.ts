const WRONG: Record<string, string> = {
  missing: 'is missing',
  'too-low': 'must be above 0',
  'too-high': 'is more than any such thing costs',
  future: 'has not come yet',
  'too-long': 'is longer than 500 characters',
};

/** What a field takes, where something else stands in it. */
const FIELD_HINTS = {
  model: 'is no model of a pack that is switched on, or several are called so',
  kind: 'is neither “asked” nor “paid”; a dealer’s “sold out” is neither',
  amount: 'is no price',
  currency: 'is no currency code such as GBP',
  date: 'is no date such as 2025, 2025-04 or 2025-04-03',
  grade: 'is no grade of that model’s pack',
  complete: 'is neither “yes” nor “no”',
  finish: 'is neither “plain” nor “refinished”',
  place: 'can’t be read',
  seller: 'is neither “private” nor “trade”',
  link: 'is no address of the web',
  note: 'can’t be read',
};

/** The fields of a price that somebody writes down, and what can be wrong with them. */
export const priceFieldTexts = {
  /** Why a table can't be read. */
  table: {
    empty: 'there are no rows below the headings',
    'too-long': 'that is more than 200,000 rows',
    'not-text': 'that is no text, but perhaps a spreadsheet: save it as CSV first',
  },
  fields: {
    model: 'model',
    kind: 'asked or paid',
    amount: 'price',
    currency: 'currency',
    date: 'date',
    grade: 'grade',
    complete: 'complete',
    finish: 'finish',
    place: 'place',
    seller: 'seller',
    link: 'link',
    note: 'note',
  },
  /** What is wrong with a field: "price: must be above 0". */
  wrong: (field: keyof typeof FIELD_HINTS, wrong: string): string =>
    `${priceFieldTexts.fields[field]}: ${wrong === 'unknown' || wrong === 'form' ? FIELD_HINTS[field] : (WRONG[wrong] ?? wrong)}`,
} as const;
