/** What the workbench's room for a seller's drafts says. */
export const draftRoomTexts = {
  heading: 'Drafts',
  intro:
    'Write or paste your advert. It is held against the packs while you type, just as a buyer with Bedplate would see it. Nothing on this page leaves your computer.',
  private: 'This is a private window: nothing that you write here is kept once it is closed. Copy it out before.',

  list: 'Your drafts',
  empty: 'There are no drafts yet. Begin one, then type your advert or paste it as it stands.',
  choose: 'Choose a draft above, or begin a new one.',
  loading: 'Opening the drafts…',
  create: 'New draft',
  unnamed: 'Draft without a title',
  changed: (day: string) => `changed ${day}`,
  /** After the day, of a draft that two windows wrote at once. */
  ofItsOwn: ', written beside another window',
  parted: (name: string) =>
    `Another window has changed this draft at the same time. Nothing is lost: both stand in the list above, and what you write here goes on in one of its own, “${name}”.`,
  remove: 'Delete',
  removed: (name: string) => `“${name}” was deleted.`,
  undo: 'Put it back',

  editor: 'This draft',
  fields: {
    title: 'Title',
    description: 'Text',
    priceText: 'Price',
    conditionText: 'Condition',
    serialText: 'Serial number',
  },
  hints: {
    title: '',
    description: '',
    priceText: 'With its currency, as in “£120”.',
    conditionText: '',
    serialText: 'As it is stamped. Several are set apart by commas.',
  },
  row: (label: string, value: string) => `${label}: ${value}`,
  marksOf: (field: string) => `Marked under ${field}`,
  kept: {
    kept: 'Kept in this browser.',
    waiting: 'Not kept yet…',
    not: 'Not kept.',
    blank: '',
  },
  copy: 'Copy as plain text',
  copied: 'Copied. Paste it where you want to publish it.',
  notCopied: 'The browser didn’t allow copying. Mark the text in the fields and copy it by hand.',

  audit: 'What a buyer would see',
  auditing: 'Comparing…',
  blank: 'As soon as something is written, what the packs say of it stands here.',
  noPack:
    'No pack that is switched on speaks of such a thing yet. Name in the title what it is, as in “sewing machine”; or look into the room “Packs” for one that knows it.',
  none: 'There is not enough yet to tell what is offered. Go on with what it is, and what you know about it.',
} as const;
