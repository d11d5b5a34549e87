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
  /** A price of another currency, brought to the band's. */
  converted: ({ from, to, times, date, pack }: Converted, amount: string): string =>
    `At the rate of ${date}, ${Number(times.toPrecision(4))} ${to} for 1 ${from} (${pack ?? 'typed in by you'}), that is ${amount}.`,
  /** A sign that several currencies share, taken for the band's. */
  taken: (currency: string) =>
    `No currency is named: its sign is taken for ${currency}, in which the pack’s prices are.`,
  kinds: { asked: 'asked', paid: 'paid' },
  factor: (label: string, times: string) => `${label}: ${times} times the price, counted in.`,
} as const;
