/** What the audit says of which one it most likely is, and of what would settle it. */
export const identifyTexts = {
  none: 'None of those that the packs know',
  yes: 'yes',
  no: 'no',
  /** Where a pack gives no question of its own. */
  ask: (attribute: string) => `Could you send a photo that shows this: ${attribute}?`,
  where: 'Look at the whole machine.',
  prior: {
    commoner: (number: string) => `About ${number} were made: more of them turn up than of the next one.`,
    rarer: (number: string) => `About ${number} were made: fewer of them turn up than of the next one.`,
    kindCommoner: 'There were many makers that no pack knows.',
    kindRarer: 'Most of this kind that turn up are of a maker that the packs know.',
    moreLikely: 'It turns up more often, before anything is seen.',
    lessLikely: 'It turns up less often, before anything is seen.',
  },
  serial: {
    inRuns: (serial: string) => `The serial ${serial} is one of those allotted to it.`,
    outside: (serial: string) => `The serial ${serial} is in none of its known blocks.`,
    anyMaker: (serial: string) => `The serial ${serial} may be of a maker that no pack knows.`,
  },
  name: {
    called: (name: string) => `The advert calls it “${name}”.`,
    none: 'The advert names no maker or model that the packs know.',
    denied: (name: string) => `The advert says that it is no “${name}”.`,
  },
  claimed: (attribute: string, value: string) => `The advert says: ${attribute}: ${value}.`,
  claimedNot: (attribute: string, value: string) => `The advert denies: ${attribute}: ${value}.`,
  seen: (attribute: string, value: string) => `You saw: ${attribute}: ${value}.`,
  /** What is known of the candidate itself, said after one of the above. */
  known: (value: string) => `Known of it: ${value}.`,
  /** Said after that where the candidate bears it out and the next one does so still more. */
  nextFitsBetter: 'The next one fits this better still.',
  knownNothing: 'Nothing is known of that here.',
  year: 'The years that the advert gives.',
  place: 'The place that the advert gives.',
  measure: (attribute: string) => `The ${attribute} that the advert gives.`,
  limit: (quote: string, attribute: string) => `The advert says “${quote}” (${attribute}).`,
  join: (first: string, second: string) => `${first} ${second}`,
  /** Conditions of a fact. */
  made: (value: string, years: string) => `${value} (made ${years})`,
  madeAt: (value: string, places: string) => `${value} (made at ${places})`,
  someNumbers: (value: string) => `${value} (some numbers only)`,
} as const;
