import { sentenceCase } from './words';

/** What the audit says of which one it most likely is, and of what would settle it. */
export const identifyTexts = {
  none: 'None of those that the packs know',
  yes: 'yes',
  no: 'no',
  where: 'Look at the whole machine.',
  prior: {
    commoner: (number: string) => `About ${number} were made: more of them turn up than of the next one.`,
    rarer: (number: string) => `About ${number} were made: fewer of them turn up than of the next one.`,
    kindCommoner: 'There were many makers that no pack knows.',
    kindRarer: 'Most of this kind that turn up are of a maker that the packs know.',
    moreLikely: 'More of this kind turn up than of the next one.',
    lessLikely: 'Fewer of this kind turn up than of the next one.',
  },
  serial: {
    inRuns: (serial: string) => `The serial ${serial} is one of those allotted to it.`,
    slip: (serial: string, meant: string) => `Read as ${meant}, the serial ${serial} is one of those allotted to it.`,
    outside: (serial: string) => `The serial ${serial} is in none of its known blocks.`,
    itsForm: (serial: string) =>
      `The serial ${serial} has the form of its maker’s, though it is in none of its blocks.`,
    anyMaker: (serial: string) => `The serial ${serial} may be of a maker that no pack knows.`,
  },
  name: {
    called: (name: string, byHand: boolean) => `${byHand ? 'You call' : 'The advert calls'} it “${name}”.`,
    takenFor: (name: string, byHand: boolean) =>
      `${byHand ? 'You call' : 'The advert calls'} it “${name}”, which this one is sometimes taken for.`,
    none: 'The advert names no maker or model that the packs know.',
    denied: (name: string, byHand: boolean) => `${byHand ? 'You say' : 'The advert says'} that it is no “${name}”.`,
  },
  claimed: (attribute: string, values: readonly string[], byHand: boolean) =>
    `${sentenceCase(attribute)}: ${byHand ? 'you say' : 'the advert says'} ${values.join(' and ')}.`,
  not: (value: string) => `not ${value}`,
  quoted: (quote: string) => `“${quote}”`,
  seen: (attribute: string, value: string) => `${sentenceCase(attribute)}: you saw ${value}.`,
  /** What is known of the candidate itself, said after one of the above. */
  known: (value: string) => `Known of this one: ${value}.`,
  knownToo: 'Known of this one too.',
  usually: (value: string) => `usually ${value}`,
  usuallyToo: 'Usually so of this one too.',
  /** Said after that where the candidate bears it out and the next one does so still more. */
  nextFitsBetter: 'The next one fits this better still.',
  knownNothing: 'Nothing is known of that here.',
  year: 'year',
  years: (years: string) => `This one was made ${years}.`,
  place: 'place',
  places: (places: string) => `This one was made at ${places}.`,
  join: (first: string, second: string) => `${first} ${second}`,
  /** The number itself, as something to look at. */
  serialLook: {
    name: 'the number on the machine',
    where: 'Where the number is stamped, or on its plate.',
    see: 'Whether it reads so, digit by digit, and whether the plate sits as if it had never been off.',
    seeNone: 'Letters are taken for digits, and a casting number or a patent date for the serial.',
    reads: (serial: string) => `It reads ${serial}`,
    other: 'It reads otherwise, or isn’t there',
  },
  /** Conditions of a fact. */
  made: (value: string, years: string) => `${value} (made ${years})`,
  madeAt: (value: string, places: string) => `${value} (made at ${places})`,
  someNumbers: (value: string) => `${value} (some numbers only)`,
} as const;
