/** What the workbench's corner for a machine's own number and its features says. */
export const enquiryTexts = {
  heading: 'Enquiry',
  intro:
    'With an old machine before you, or photos of one, answer what you can see of it; what it most likely is stands here at once. No number is needed, and nothing on this page leaves your computer.',
  loading: 'Opening the packs…',

  things: {
    heading: 'What is it?',
    none: 'No pack that is switched on asks about a machine. The one that comes with Bedplate does: switch it on in the room “Packs”.',
    is: (thing: string) => `Asked about: ${thing}.`,
    other: 'Something else',
  },
  question: 'One question at a time',
  asking: 'Comparing…',
  kind: 'About this kind',
  cautions: 'To mind',
  toAsk: 'What to ask, or to have photographed',
  broken:
    'Something went wrong inside Bedplate while it compared this machine with the packs. Take the last answer back, or start again.',

  /** What somebody says of it, as it was marked on a page or pasted. */
  said: {
    heading: 'What is said of it',
    inside: 'an advert’s words, or a message’s, to be held against what is known',
    intro:
      'Paste an advert’s words here, or a message’s. They are held against what is known, as an advert on a page is; they stay on this computer.',
    label: 'The words',
    take: 'Take these words in',
    taken: 'These words count now. Change them and take them in again, or empty the field to leave them out.',
    which: 'Choose below what it is: these words don’t tell.',
  },
  goOn: {
    intro: 'You want to sell it? A draft begins with what was found, for you to change.',
    button: 'Go on as a seller’s draft',
  },

  number: 'Its number',
  numberIntro: 'If you can read a serial number on it, the packs’ tables say what they know of it.',
  noTables:
    'No pack that is switched on has tables of serial numbers. If your club has such a pack, open its file here.',
  pack: 'Ask',
  allPacks: 'all packs in use',
  serial: 'Serial number',
  serialHint: 'As it is stamped. Spaces, points and dashes don’t matter.',
  name: 'Name on it, if there is one',
  nameHint: 'Maker or model, as it stands on the machine.',
  bears:
    'Other makers had numbers like this one. Does one of these names stand on the machine? Then what is known of it counts.',
  itBears: (maker: string) => `Yes: ${maker}`,
  ask: 'Look it up',
  open: 'Open a pack',
  another: 'Open another pack',
  nothingAsked: 'What was made under it, when and where, stands here then.',

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

  /** The answer as plain text, to send to whoever asked. */
  written: {
    heading: 'Take the answer along',
    intro: 'All of it as plain text: what it is, how sure that is, why, and what to ask next.',
    copy: 'Copy the whole answer',
    copied: 'Copied. Paste it wherever it is wanted.',
    notCopied: 'The browser didn’t allow copying. Mark the text below and copy it by hand.',
    show: 'Show the text',
    label: 'The answer as text',
    what: (label: string) => `What it most likely is: ${label}`,
    between: (labels: readonly string[]) => `It may be: ${labels.join('; or ')}.`,
    seen: 'What was seen:',
    for: 'What speaks for it:',
    against: 'What speaks against it:',
    follows: 'What follows:',
    mind: 'To mind:',
    ask: 'What to ask or look at next:',
    from: 'From these packs:',
    number: (serial: string) => `Its number, ${serial}, is in the tables:`,
    numberUnknown: (serial: string) => `Its number, ${serial}, is in none of the tables asked. Tables have gaps.`,
    run: (first: string, last: string, models: string, year: number | null, place: string | null) =>
      [
        `${first} to ${last}: ${models}`,
        ...(year === null ? [] : [String(year)]),
        ...(place ? [`made in ${place}`] : []),
      ].join(', '),
    pair: (name: string, value: string) => `${name}: ${value}`,
    withSource: (line: string, source: string) => `${line} (${source})`,
    pack: (title: string, edition: number, origin: string) => `${title}, edition ${edition}, ${origin}`,
    end: (day: string) =>
      `Put together by Bedplate on ${day} from what was said of the machine; nobody has looked at the machine itself.`,
  },
} as const;
