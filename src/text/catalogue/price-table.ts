/** The table of prices behind a band; it is fetched where somebody opens it. */
export const priceTableTexts = {
  heading: 'Prices behind the band',
  caption: 'Those that count for most stand first.',
  amount: 'Price',
  price: (kind: string, amount: string) => `${amount} ${kind}`,
  date: 'Date',
  of: 'What and where',
  what: (label: string, grade: string | null) => (grade ? `${label}, ${grade}` : label),
  today: 'In today’s money',
  counts: 'Counts for',
  moves: 'Moves the middle by',
  from: 'From',
  own: 'you',
  no: (why: string) => `not counted: ${why}`,
  percent: (share: number) => {
    const digits = Math.abs(share).toFixed(1);
    const sign = share > 0 ? '+' : '−';
    return `${digits === '0.0' ? '' : sign}${digits} %`;
  },
  more: (count: number) => `${count} more count for less and are left out of the table.`,
  /** Why an observation is not counted. */
  leftOut: {
    future: 'its date has not come yet',
    'no-rate': 'no exchange rate for that currency near that date',
    finish: 'refinished ones and plain ones are priced apart',
    'another-model': 'of another model, and no pack says how their prices compare',
    'another-grade': 'of another grade, and no pack says how their prices compare',
    amount: 'that is no price',
  },
} as const;
