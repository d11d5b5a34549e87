/** The drawn scale of prices, in panel and workbench. */
export const priceScaleTexts = {
  /** For whoever doesn't see it. */
  label: (asked: string | null, low: string, mid: string, high: string) =>
    `Scale of prices: usual from ${low} to ${high}, middle ${mid}${asked === null ? '' : `, this one ${asked}`}.`,
  labelSeen: (asked: number, paid: number) =>
    `On it ${asked === 1 ? 'one price' : `${asked} prices`} asked and ${paid === 1 ? 'one' : paid} paid; they stand in the table below.`,
  behind: 'Prices behind it',
  this: 'this price',
  asked: 'asked',
  paid: 'paid',
  usual: 'eight in ten',
  paler: 'Paler marks count for less.',
  beyond: 'Marks at the very edge stand for prices further out.',
  mark: (kind: string, amount: string, date: string) => `${amount} ${kind}, ${date}`,
} as const;
