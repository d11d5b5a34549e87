import { number } from './words';

/** A number among its neighbours, drawn over the years, and the years that an advert names. */
export const timeLineTexts = {
  heading: (maker: string | null) => (maker === null ? 'Among its neighbours' : `Among its neighbours: ${maker}`),
  legend: 'The thick bar is the block that holds the number.',
  legendGap: 'The broken line is where the number would stand.',
  legendYears: 'Open bars are years of another kind; when it was made, launched and bought are three different things.',
  label: (from: number, to: number, runs: number) =>
    `Time line from ${from} to ${to} with ${runs === 1 ? 'one block' : `${runs} blocks`} of numbers; the table below says the same.`,
  yours: (serial: string) => `${serial}, this one`,
  noYears: 'The tables name no years for these numbers, so there is nothing to draw.',
  undated: 'Blocks without a year stand in the table only.',
  table: 'The same as a table',
  caption: 'Blocks of numbers in order',
  yearsCaption: 'Years of other kinds',
  numbers: 'Numbers',
  size: 'How many',
  year: 'Year',
  model: 'Model',
  kind: 'What is meant',
  madeIn: (place: string) => `made in ${place}`,
  holds: 'this number',
  unknown: 'not known',
  /** How large the block is, and what is known of the batches within. */
  block: (size: number, year: number | null) =>
    `Its block holds ${number(size)} ${size === 1 ? 'number' : 'numbers'}${year === null ? '' : `, allotted in ${year}`}. Not every one of them was used.`,
  batch: (model: string, size: number, date: string | null) =>
    `${model}: a batch of ${number(size)}${date === null ? '' : ` on record, ${date}`}.`,
  span: (from: number, to: number, open: boolean) =>
    open ? `from ${from}` : from === to ? `${from}` : `${from}–${to}`,
  kinds: {
    made: (years: string) => `said: made ${years}`,
    launched: (years: string) => `said: launched ${years}`,
    bought: (years: string) => `said: bought ${years}`,
    owned: (years: string) => `said: owned since ${years}`,
    model: (years: string) => `known: model made ${years}`,
    price: (years: string) => `known: on sale new in ${years}`,
  },
} as const;
