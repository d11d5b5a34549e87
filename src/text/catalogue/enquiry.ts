/** What the workbench's corner for a machine's own number says. */
export const enquiryTexts = {
  heading: 'Enquiry',
  intro:
    'Is mine what it is said to be? Type the serial number that is stamped on your machine; the packs’ tables say what they know of it. Nothing on this page leaves your computer.',
  loading: 'Opening the tables…',
  noTables:
    'No pack that is switched on has tables of serial numbers. If your club has a pack, choose its file below; one that is here already is switched on in the room “Packs”.',
  pack: 'Ask',
  allPacks: 'all packs that are switched on',
  serial: 'Serial number',
  serialHint: 'As it is stamped. Spaces, points and dashes don’t matter.',
  ask: 'Look it up',
  another: 'Open another pack',
  nothingAsked: 'Type a number and press “Look it up”: what was made under it, when and where, stands here then.',

  result: 'What the tables say',
  verdicts: {
    found: (serial: string, runs: number) =>
      runs === 1 ? `${serial} is in one block of numbers.` : `${serial} is in ${runs} blocks of numbers.`,
    gap: (serial: string) =>
      `${serial} looks like a number of this kind, but it is in none of the blocks that the tables hold. Tables have gaps.`,
    notAllotted: (serial: string) =>
      `${serial} looks like a number of this kind, but by tables that count as complete it was never allotted. Read it again with a light from the side.`,
    misread: (serial: string) =>
      `${serial} is in no table as written, but a number that is easily confused with it is. Read it again with a light from the side.`,
    'bad-form': (serial: string) => `No maker whose tables were asked wrote numbers like ${serial}.`,
    none: 'Type a number first.',
  },
  suggestions: 'Perhaps it reads:',
  tryIt: (number: string) => `Look up ${number}`,
  forms: 'The numbers in these tables look like this:',
  form: (maker: string | null, form: string) => (maker === null ? form : `${maker}: ${form}`),
  notProof:
    'A number in the tables is a good sign and no proof: plates are moved and numbers are copied. If much money hangs on it, show the machine to somebody who knows its kind.',

  line: {
    heading: (maker: string | null) => (maker === null ? 'Among its neighbours' : `Among its neighbours: ${maker}`),
    legend: 'The thick bar is the block that holds your number.',
    legendGap: 'The broken line is where your number would stand.',
    label: (from: number, to: number, runs: number) =>
      `Time line from ${from} to ${to} with ${runs === 1 ? 'one block' : `${runs} blocks`} of numbers; the table below says the same.`,
    yours: (serial: string) => `${serial}, yours`,
    noYears: 'The tables name no years for these numbers, so there is nothing to draw.',
    undated: 'Blocks without a year stand in the table only.',
    table: 'The same as a table',
    caption: 'Blocks of numbers in order',
    numbers: 'Numbers',
    year: 'Year',
    model: 'Model',
    madeIn: (place: string) => `made in ${place}`,
    holds: 'your number',
    unknown: 'not known',
  },
} as const;
