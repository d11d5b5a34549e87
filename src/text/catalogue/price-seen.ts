/** The drawn scale of prices and the table behind it, in panel and workbench. */
export const priceSeenTexts = {
  scale: {
    /** For whoever doesn't see it. */
    label: (asked: string | null, low: string, mid: string, high: string) =>
      `Scale of prices: usual from ${low} to ${high}, middle ${mid}${asked === null ? '' : `, this one ${asked}`}.`,
    labelSeen: (asked: number, paid: number) =>
      `On it ${asked === 1 ? 'one price' : `${asked} prices`} asked and ${paid === 1 ? 'one' : paid} paid; they stand in the table below.`,
    this: 'this price',
    asked: 'asked',
    paid: 'paid',
    usual: 'eight in ten',
    paler: 'Paler marks count for less.',
    beyond: 'Marks at the very edge stand for prices further out.',
    mark: (kind: string, amount: string, date: string) => `${amount} ${kind}, ${date}`,
  },
  table: {
    heading: 'Prices behind it',
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
  },
} as const;
