/** Saying how a field of a page is to be read, in the panel. */
export const pickTexts = {
  toCheck: (fields: string) => `Please check how this was read: ${fields}.`,
  own: (fields: string) => `Your word counts here, not the page’s reading: ${fields}.`,
  check: (field: string) => `Please check the ${field}`,
  correct: (field: string) => `Correct the ${field}`,
  yours: (field: string) => `Your word on the ${field}`,
  readings: (field: string) => `Readings of the ${field}`,
  /** Why the first one counts, as long as nobody says otherwise. */
  why: {
    title: 'Headings and what the page tells machines are weighed together. Press the one that is right.',
    price:
      'What the page shows counts before what it only tells machines; of several amounts, the one that stands most plainly as a price. Press the one that is right.',
    condition: 'The page’s own words count before the terms of a vocabulary. Press the one that is right.',
    description:
      'A text under a label counts first, then what the page tells machines, then the longest prose. Press the one that is right.',
  },
  another: 'Another price',
  take: 'Take this price',
  picked: (kept: string) => `The reading with the tick is your word now, not the page’s own. ${kept}`,
  typed: (kept: string) => `This price is your word now, not the page’s. ${kept}`,
  lapsed: {
    gone: (value: string) =>
      `You had picked “${value}”. The page no longer says that, so your word doesn’t count: pick again, or take it back.`,
    changed: (value: string) =>
      `You had typed “${value}”. The page says something else by now than it did then, so your word doesn’t count: say it again, or take it back.`,
    unreadable: (value: string) =>
      `“${value}” can’t be read as a price, so it doesn’t count: type another one, or take it back.`,
  },
} as const;
