import { pricePart, readPart, serialPart } from './panel-parts';
import { panelStates } from './panel-states';
import { counted, number, sentenceCase } from './words';

function lines(questions: readonly string[]): string {
  return questions.map((question) => `- ${question}`).join('\n');
}

/** All that the side panel says of its own; what packs and adverts say stands in packs and adverts. */
export const panelTexts = {
  title: 'Bedplate: this advert',
  product: 'Bedplate',
  packsLink: 'Packs',
  packsLinkTitle: 'Packs: opens a page of its own',

  ...panelStates,

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

  price: pricePart,
  serial: serialPart,
  read: readPart,

  questions: {
    heading: 'To ask the seller',
    more: (n: number) => `${sentenceCase(counted(n, 'more question stands', 'more questions stand'))} in the message.`,
    copy: 'Copy as a message',
    copied: 'Copied. Paste it into your message to the seller.',
    notCopied: 'The browser didn’t allow copying. Mark the text below and copy it by hand.',
    show: 'Show the message',
    /** In the language of the advert, as the questions are. */
    message: {
      en: (questions: readonly string[]) =>
        `Hello, I’m interested in the machine you have on offer and would like to ask:\n\n${lines(questions)}\n\nThank you.`,
      de: (questions: readonly string[]) =>
        `Guten Tag, ich interessiere mich für Ihre Maschine und möchte gern fragen:\n\n${lines(questions)}\n\nVielen Dank.`,
      fr: (questions: readonly string[]) =>
        `Bonjour, votre machine m’intéresse et j’aimerais vous demander :\n\n${lines(questions)}\n\nMerci d’avance.`,
    },
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
} as const;
