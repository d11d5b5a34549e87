/** What the command line says of which one it most likely is; English, as all of the command line. */
export const identifyCliTexts = {
  usage:
    'npm run -s identify -- [--what WORDS] [--serial NUMBER] [--seen FEATURE=VALUE ...] [--text WORDS] [--pack FILE ...] [--as-of YYYY-MM-DD] [--json]',
  likely: 'Most likely',
  for: 'for it',
  against: 'against it',
  bits: (bits: string) => `(${bits} bits)`,
  follows: (label: string) => `What is known of it: ${label}`,
  usually: (text: string) => `usually ${text}`,
  settle: 'What would settle it',
  effort: (name: string, effort: 'read' | 'photo' | 'visit') =>
    `${name}, ${{ read: 'to read in the advert', photo: 'to see on a photo', visit: 'to see on the spot' }[effort]}`,
  where: 'where',
  see: 'look for',
  answers: 'answers',
  enough: 'No further look would change this.',
  restsOn: 'By its number alone: if that is read rightly, and the plate is the machine’s own.',
  serial: 'Serial',
  run: (first: string, last: string, models: string, year: string | null) =>
    `${first} to ${last}: ${models}${year === null ? '' : `, ${year}`}`,
  whatNotCovered: (what: string, words: string) =>
    `no pack here speaks of "${what}"; words that show a thing: ${words}`,
  noSuchFeature: (given: string, features: string) => `--seen: no feature "${given}" here; there are: ${features}`,
  severalFeatures: (given: string, refs: string) => `--seen: "${given}" can be several features: ${refs}`,
  seenForm: (given: string) => `--seen: "${given}" is not of the form frame=aluminium`,
  notAsked: (feature: string) => `--seen: "${feature}" is measured, not seen: give it in words, with --text`,
  noSuchValue: (given: string, feature: string, values: string) =>
    `--seen: no value "${given}" of ${feature}; there are: ${values}`,
  noArguments: (given: string) => `"${given}" belongs to no option; the words for the thing go after --what`,
} as const;
