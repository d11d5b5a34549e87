import { counted, sentenceCase } from './words';

/** A keeper's desk: what members propose, what is decided about it, and the next edition. */
export const keeperTexts = {
  open: 'Keep this pack',
  intro:
    'For whoever keeps this pack: open members’ proposals, decide about each change, and publish the next edition. Everything stays in this browser until you save the files and put them on your host.',
  choose: 'Open proposals',
  proposals: (n: number) => `${sentenceCase(counted(n, 'proposal', 'proposals'))} on the desk`,
  by: (author: string, base: number) => `${author}, from edition ${base}`,
  strangers: (n: number) =>
    `${sentenceCase(counted(n, 'file is no proposal', 'files are no proposals'))} to this pack, or not as its author signed it.`,
  clear: 'Put all of them away',
  rows: 'What is proposed',
  none: 'Nothing is proposed.',
  place: (part: string, name: string, field: string | null) =>
    field === null ? `${name} (${part})` : `${name} (${part}): ${field}`,
  here: (value: string) => `The pack says: ${value}`,
  hereNothing: 'The pack says nothing there.',
  offer: (words: string, from: string) => `${from}: ${words}`,
  states: {
    open: '',
    already: 'The pack says so already.',
    conflict: 'These exclude each other.',
    outdated: 'The pack has changed there since.',
  },
  accept: 'Accept',
  acceptOf: (words: string) => `: ${words}`,
  reason: 'Reason, for the author',
  decline: 'Decline',
  other: 'Another value in its place',
  edit: 'Put this there',
  needsReason: 'Say why: the author is told.',
  wrongValue: 'That is not written as such a value is.',
  decided: { accept: 'Accepted.', edit: 'Edited.', decline: 'Declined.' },
  lapsed: 'You had decided here. Since then something else is proposed, or the pack says something else: decide anew.',
  again: 'Decide again',
  acceptAll: 'Accept all that fits',
  publish: 'Publish',
  next: (edition: number) => `The next edition is ${edition}.`,
  undecided: (n: number) => `${sentenceCase(counted(n, 'place is', 'places are'))} undecided.`,
  passphrase: 'A passphrase for the backup of the pack’s key, ten characters or more',
  firstKey:
    'This pack is not sealed yet. A key is made for it, which stays in this browser; its backup is saved as a file that only your passphrase opens. Keep both well: a lost key ends the pack. The pack gets a new id that carries the key’s fingerprint.',
  elsewhere: 'The key that seals this pack is not in this browser, so it can’t be published from here.',
  make: 'Seal the next edition',
  made: (edition: number) =>
    `Edition ${edition} is sealed and stands on your shelf. Save these files and put them on your host, the notice last; send the answers to the authors.`,
  save: 'Save',
  problems: {
    passphrase: 'The passphrase is too short.',
    undecided: 'Something is still undecided.',
    issues: 'With all that is decided the pack would not be in order:',
    key: 'The key that seals this pack is not in this browser.',
    gone: 'The pack is no longer here.',
    stale:
      'Something was decided, brought here or published in another window while this edition was sealed, so it was not kept. Look at the desk again.',
  },
} as const;
