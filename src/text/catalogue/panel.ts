import { counted, number, sentenceCase } from './words';

/** All that the side panel says of its own; what packs and adverts say stands in packs and adverts. */
export const panelTexts = {
  title: 'Bedplate: this advert',
  product: 'Bedplate',
  packsLink: 'Packs',
  packsLinkTitle: 'Packs: opens a page of its own',

  /** States in which there is no audit: what is so, and what to do. */
  waiting: {
    heading: 'Open an advert and press the Bedplate button',
    text: 'Bedplate then reads that one page, and shows here what the advert says beside what is known of such machines. In this tab nothing has been read yet.',
    hint: 'If you don’t see the button, look behind the toolbar’s puzzle-piece menu and pin it.',
  },
  /** Beside states without an advert. */
  onTheTable: { text: 'Have a machine on the table?', action: 'Answer one question about it' },
  reading: {
    heading: 'Reading the page…',
    text: 'This takes a moment. If nothing has changed after ten seconds, press the button again.',
  },
  left: {
    heading: 'This tab has moved on',
    text: 'What was read here belonged to the page that stood here before. To read this one, press the Bedplate button again.',
  },
  refused: {
    heading: 'Bedplate may not read this tab',
    reasons: {
      'browser-page':
        'This is one of the browser’s own pages, and browsers keep those closed to extensions. Open an advert in this tab or another one, then press the button there.',
      file: 'This is a file on your computer. To have such files read, open the browser’s page about extensions, choose Bedplate’s details and allow access to file addresses; then press the button again.',
      document:
        'This tab shows a PDF, a picture or a film in the browser’s own viewer, not a web page. Open the advert’s page itself and press the button there.',
      blocked:
        'The browser keeps this page closed to extensions, as it does its own shop for them, or the page did not load. Once the advert is shown, press the button again.',
    },
  },
  failed: {
    heading: 'The page could not be read',
    reasons: {
      reader:
        'The page gave no answer that Bedplate can use. Reload it, wait until it is complete, and press the button again.',
      storage:
        'The page holds more than the browser lets an extension keep. If the advert also has a plainer page of its own, try that.',
    },
  },
  broken: {
    heading: 'Bedplate made a mistake',
    text: 'Something went wrong inside Bedplate while it compared this advert with the packs. Nothing was sent anywhere. Try again; if it happens every time, please report it with the address of the advert.',
  },
  packsFailed: {
    heading: 'The packs can’t be opened',
    troubles: {
      full: 'The browser’s space for this profile is used up. Free some, then open this panel again.',
      denied:
        'This browser window doesn’t let extensions keep anything, as some private windows don’t. Use an ordinary window.',
      blocked: 'Another Bedplate page from before an update is still open. Close it, then open this panel again.',
      newer: 'The packs were kept by a newer Bedplate than this one. Update Bedplate.',
      failed: 'The browser’s storage did not answer. Close this panel and open it again.',
    },
  },
  noListing: {
    heading: 'No advert found on this page',
    text: 'Bedplate found nothing here that is offered for sale. Open the page of one advert, so that its title and description are shown, and press the button again.',
  },
  list: {
    heading: 'Many adverts on this page',
    text: 'Bedplate reads one advert at a time. Open the one you are interested in, so that it has the page to itself, and press the button there.',
  },
  noPack: {
    heading: 'No pack speaks of this',
    text: (title: string) =>
      `The page was read (“${title}”), but no pack that is switched on speaks of such a thing, so there is nothing to hold it against. If this is no advert for an old machine, open one and press the button there.`,
    action: 'Look at the packs',
  },

  /** The sentence that sums up. */
  summary: {
    kinds: {
      item: '',
      part: 'This advert offers a part or an accessory, not a machine.',
      wanted: 'Someone is looking for a machine here; nothing is on sale.',
      lot: 'Several things are sold together here, so not every word can be pinned to one machine.',
      service: 'A service is offered here, not a machine.',
    },
    disproved: (n: number) =>
      `${sentenceCase(counted(n, 'thing', 'things'))} in this advert ${n === 1 ? 'doesn’t' : 'don’t'} hold against what is known.`,
    alsoUnproved: (n: number) => `${sentenceCase(n === 1 ? 'one more is' : `${number(n)} more are`)} not shown yet.`,
    onlyUnproved: (n: number) =>
      `Nothing here is contradicted by what is known, but ${counted(n, 'thing is', 'things are')} not shown yet.`,
    cautions: (n: number) =>
      `Nothing here is contradicted by what is known. There ${n === 1 ? 'is one thing' : `are ${number(n)} things`} to mind.`,
    price: {
      below: 'The price is below what such a machine usually costs.',
      'low-side': 'The price is at the lower side of the usual.',
      'high-side': 'The price is at the upper side of the usual.',
      above: 'The price is above what such a machine usually costs.',
    },
    agrees: 'What the advert says agrees with what is known, as far as the packs speak of it.',
    nothing: 'The packs found nothing in this advert that they can confirm or contradict.',
  },

  groups: {
    disproved: {
      heading: 'Doesn’t hold',
      mark: '≠',
      explain: 'The advert’s words and what is known can’t both be true.',
    },
    unproved: { heading: 'Not shown yet', mark: '?', explain: 'It may be so; the advert doesn’t show it.' },
    caution: { heading: 'To mind', mark: '!', explain: '' },
    agrees: { heading: 'Agrees', mark: '=', explain: '' },
  },
  /** The line under which what agrees is folded: of which words. */
  agreeing: (quotes: readonly string[], more: number) =>
    [...quotes.map((quote) => `“${quote}”`), ...(more > 0 ? [`${number(more)} more`] : [])].join(', '),
  said: 'The advert says',
  saidAgain: 'The advert also says',
  known: 'What is known',
  fields: {
    title: 'in the title',
    description: 'in the description',
    details: 'in the list of details',
    condition: 'under condition',
    serials: 'under serial number',
    price: 'in the price',
  },
  places: (fields: readonly string[]) => fields.join(' and '),
  fromPack: (title: string, edition: number) => `${title}, edition ${edition}`,
  unknownPack: (id: string) => `pack ${id}`,
  source: 'Source:',
  sourceAgain: 'Source: the same as above.',
  noSource: 'The pack names no source for this.',
  ask: 'To ask:',

  term: (label: string) => `What is meant by “${label}”?`,
  termWhere: 'Where to look:',
  termSee: 'How to see it:',

  how: 'How do we know?',
  howEntry: 'Entry in the pack',
  howPlace: 'Place in the advert',
  howPlaceOf: (field: string, start: number, end: number) => `${field}, characters ${start + 1} to ${end}`,
  howCheck: 'What was compared',
  checks: {
    'serial-model': 'serial number against the model named',
    'serial-year': 'serial number against the year given',
    'serial-form': 'form of the serial number',
    'claim-fact': 'claim against the model’s known features',
    'claim-claim': 'two claims of the advert against each other',
    'name-name': 'two names in the advert against each other',
    family: 'claim against what every machine of the family must be',
    fits: 'part against the models it fits',
    'made-where': 'place of making against the places known',
    weight: 'weight given against the known weight',
    rarity: '“rare” against the number made',
    'age-words': 'words of age against the years of making',
    price: 'asking price against the known prices',
    'look-alike': 'the model named against those it is mistaken for',
    missing: 'what an advert for such a machine should show',
    wording: 'words that are used loosely in the trade',
    caution: 'safety and dealing',
    'source-conflict': 'what the page says of itself in different places',
  },

  price: {
    heading: 'Price',
    hows: {
      asking: (amount: string) => `The advert asks ${amount}.`,
      bid: (amount: string) => `The highest bid so far is ${amount}; a bid is not yet a price.`,
      sold: (amount: string) => `The page says it sold for ${amount}.`,
      from: (amount: string) => `The advert says “from” ${amount}; what this one costs is not said.`,
    },
    none: 'The advert names no price.',
    standings: {
      below: 'That is less than such a machine usually costs. Ask why.',
      'low-side': 'That is at the lower side of what such a machine usually costs.',
      within: 'That is about what such a machine usually costs.',
      'high-side': 'That is at the upper side of what such a machine usually costs.',
      above: 'That is more than such a machine usually costs.',
      'not-comparable': 'It can’t be compared with the prices known to the packs.',
      'no-band': 'The packs know no prices for this one.',
    },
    band: (low: string, high: string) => `Eight in ten cost between ${low} and ${high}.`,
    /** Where the advert's currency is not that of the known prices. */
    converted: (amount: string) => `By the packs’ rate that is about ${amount}.`,
    /** On the drawn scale. */
    scaleLabel: (asked: string, low: string, mid: string, high: string) =>
      `Scale of prices: usual from ${low} to ${high}, middle ${mid}, this advert ${asked}.`,
    numbers: {
      middle: 'Middle of the known prices',
      ratio: 'This price divided by the middle',
      share: 'Share of such machines that cost no more than this',
      observations: 'Single prices counted',
      effective: 'Weight of all that is known, counted in prices',
    },
    ofHundred: (n: number) => `about ${n} in 100`,
    askedIsNotPaid: 'What is asked is not what is paid: in a thin market people often ask for more than they get.',
  },

  serial: {
    heading: 'Serial number',
    written: 'As the advert writes it:',
    verdicts: {
      fits: 'The number fits what the advert says.',
      'another-model': 'By the tables this number belongs to another model.',
      'another-year': 'By the tables this number belongs to another year.',
      unknown: 'This number is in none of the tables that the packs hold. Tables have gaps.',
      misread: 'This number is in no table as written, but a number that is easily confused with it is.',
      'bad-form': 'No maker known to the packs wrote its numbers in this form.',
      none: 'The advert shows no serial number. It is worth asking for: it dates a machine better than most words.',
    },
    runsCaption: 'Numbers allotted together that hold this one',
    numbers: 'Numbers',
    model: 'Model',
    year: 'Year',
    yearUnknown: 'not known',
    place: 'Made in',
    source: 'Source',
    suggestions: 'Perhaps it was meant:',
    suggestion: (number: string, models: string, year: number | null) =>
      `${number}: ${models}${year === null ? '' : `, ${year}`}`,
    yearIsAllotment: 'The year is that of the block of numbers, not of the sale.',
    others: 'Other numbers in the advert',
    folded: (number: string, verdict: string) => `${number}: ${verdict}`,
    short: {
      fits: 'fits what the advert says',
      'another-model': 'another model’s, by the tables',
      'another-year': 'of another year, by the tables',
      unknown: 'in none of the tables',
      misread: 'in no table as written',
      'bad-form': 'not of a known form',
      none: 'None is shown. It is worth asking for.',
    },
  },

  questions: {
    heading: 'To ask the seller',
    more: (n: number) => `${sentenceCase(counted(n, 'more question stands', 'more questions stand'))} in the message.`,
    copy: 'Copy as a message',
    copied: 'Copied. Paste it into your message to the seller.',
    notCopied: 'The browser didn’t allow copying. Mark the text below and copy it by hand.',
    show: 'Show the message',
    message: (questions: readonly string[]) =>
      `Hello, I’m interested in the machine you have on offer and would like to ask:\n\n${questions.map((question) => `- ${question}`).join('\n')}\n\nThank you.`,
    messageLabel: 'Message to the seller',
  },

  packs: {
    heading: 'Who spoke here',
    /** The line under which they are folded. */
    count: (packs: number, unsealed: number) =>
      `${counted(packs, 'pack', 'packs')}${unsealed === 0 ? '' : `, ${packs === 1 ? 'unsealed' : `${number(unsealed)} of them unsealed`}`}`,
    edition: (n: number) => `edition ${n}`,
    invented: (pack: string) => `${pack} (invented)`,
  },

  read: {
    heading: 'What was read on the page',
    intro: 'If something is read wrongly here, the rest is wrong too.',
    fields: {
      title: 'Title',
      description: 'Description',
      details: 'Details',
      price: 'Price',
      serial: 'Serial number',
      condition: 'Condition',
      place: 'Place',
      listedDate: 'Listed on',
      photo: 'Photos',
    },
    sources: {
      'json-ld': 'from the page’s embedded data',
      microdata: 'from marks in the page’s text',
      rdfa: 'from marks in the page’s text (RDFa)',
      state: 'from data inside the page’s scripts',
      meta: 'from the page’s head',
      page: 'from the visible page',
      draft: 'from the draft',
    },
    confidence: (share: number) => `${Math.round(share * 100)} in 100 sure`,
    alternatives: 'elsewhere on the page:',
    photos: (n: number) => `${n === 0 ? 'no photos' : counted(n, 'photo', 'photos')}, not loaded`,
    none: 'nothing found',
  },

  cut: (hidden: number) => `… (${hidden} more characters)`,
} as const;
