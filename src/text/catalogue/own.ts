import { counted, sentenceCase } from './words';

/** What a user corrects of a pack for themselves, and proposes to its keeper. */
export const ownTexts = {
  open: 'Correct something',
  intro:
    'What you correct lies over the pack, in this browser alone, and speaks from then on. The pack itself stays as its keeper sealed it. You can propose your corrections to the keeper.',
  search: 'Which entry? Part of a model’s name, or a serial number',
  nothing: 'Nothing is called so, and no run holds such a number.',
  more: (n: number) => `${n} more; write more of the name.`,
  edit: (part: string, name: string) => `${name} (${part})`,
  close: 'Another entry',
  hint: 'Change one thing, then keep it. A range is written “11 to 13”, several values with commas, yes or no as such.',
  keep: 'Keep',
  keepOf: (field: string) => `: ${field}`,
  wrong: (example: string) => `That is not written as such a value is, for example “${example}”.`,
  notInOrder: (what: string, expected: string) =>
    `With that the pack would not be in order, so it was not kept. There would be: ${what}. There may be: ${expected}.`,
  stale:
    'This was changed in another window meanwhile. It is shown as it is now; what you typed stands in the field still.',
  yours: 'Your corrections',
  takeBack: 'Take back',
  clashing: (n: number) =>
    `${sentenceCase(counted(n, 'of your corrections no longer fits', 'of your corrections no longer fit'))} this edition, which says something else there; what the edition says speaks.`,
  cameBack: (n: number) =>
    `${n === 1 ? 'One of your corrections stands' : `${sentenceCase(counted(n, 'correction', 'corrections'))} of yours stand`} in this edition now: the keeper says so too.`,
  propose: {
    heading: 'Propose them to the keeper',
    name: 'Your name, as the club knows it',
    note: 'Why, and from where you know it',
    make: 'Make the proposal',
    made: 'This is your proposal, signed. Send it to the keeper as a file, or paste it into a message. It says your name, your reasons and your corrections, and nothing else.',
    text: 'The proposal as text',
    save: 'Save it as a file',
    failed: 'The proposal could not be made. Reload this page and try again.',
    nameless: 'Say who proposes it.',
  },
} as const;
