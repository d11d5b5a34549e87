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

/** How a price was converted; `pack` is null where the user typed the rate in. */
interface Converted {
  from: string;
  to: string;
  times: number;
  date: string;
  pack: string | null;
}

/** What is said of prices wherever they are shown. */
export const priceTexts = {
  /** Why a price is not held against a band. */
  why: {
    kind: 'It can’t be compared: no single thing of that kind is on sale here, and parts, lots and wishes have prices of their own.',
    'no-price': 'It can’t be compared: no price is given.',
    bid: 'It can’t be compared: where an auction starts or stands tells nothing of where it ends.',
    currency: 'It can’t be compared: several currencies share that sign.',
    'no-rate': 'It can’t be compared: no pack has an exchange rate for that currency, and none was typed in.',
    amount: 'It can’t be compared: that is no price.',
    'priced-apart': 'It can’t be compared: refinished ones are priced apart from plain ones, of which the band is.',
  },
  /** Why an observation is not counted. */
  leftOut: {
    future: 'its date has not come yet',
    'no-rate': 'no exchange rate for that currency near that date',
    finish: 'refinished ones and plain ones are priced apart',
    'another-model': 'of another model, and no pack says how their prices compare',
    'another-grade': 'of another grade, and no pack says how their prices compare',
    amount: 'that is no price',
  },
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
    `${priceTexts.fields[field]}: ${wrong === 'unknown' || wrong === 'form' ? FIELD_HINTS[field] : (WRONG[wrong] ?? wrong)}`,
  /** A price of another currency, brought to the band's. */
  converted: ({ from, to, times, date, pack }: Converted, amount: string): string =>
    `At the rate of ${date}, ${Number(times.toPrecision(4))} ${to} for 1 ${from} (${pack ?? 'typed in by you'}), that is ${amount}.`,
  kinds: { asked: 'asked', paid: 'paid' },
  factor: (label: string, times: string) => `${label}: ${times} times the price, counted in.`,
} as const;
