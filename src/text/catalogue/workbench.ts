import { counted } from './words';

/** What is said of a pack file that is sound by itself but can't stand on this shelf. */
export const installTexts = {
  idIsShipped: (id: string) => `"${id}" is the id of a pack that came with Bedplate`,
  anotherId: 'another id',
  idTwice: (id: string) => `"${id}" is in two of the chosen files`,
  onePerId: 'each id in one file',
  unreadable: 'This file could not be opened.',
  readable: 'a text file that can be opened',
  tooLarge: (megabytes: number) => `The file has ${megabytes} MB.`,
  atMost: (megabytes: number) => `a file of at most ${megabytes} MB`,
  tooLargeTogether: (megabytes: number) => `The files chosen have ${megabytes} MB together.`,
  fewer: (megabytes: number) => `at most ${megabytes} MB at once; choose fewer files`,
} as const;

/** All that the workbench's page says. */
export const workbenchTexts = {
  title: 'Bedplate: workbench',
  product: 'Bedplate',
  rooms: {
    label: 'Rooms of the workbench',
    drafts: 'Drafts',
    enquiry: 'Enquiry',
    sheets: 'Sheets',
    prices: 'Prices',
    packs: 'Packs',
    opening: 'Opening…',
  },
  begunAnew: {
    told: (day: string) =>
      `All that Bedplate kept in this browser is gone, as was found on ${day}: packs, corrections, drafts, sheets, prices, photos and keys. A browser throws everything away where it finds its own storage damaged. What you saved as files is all there is of it: bring packs and prices again from those.`,
    read: 'Put this note away',
  },

  shelf: {
    heading: 'Packs',
    intro:
      'A pack is what a club knows about some kind of machine, in one file. Adverts are held against the packs that are switched on here. Nothing of yours leaves your computer: where you follow a pack, its host is asked for newer editions and told nothing.',
    listHeading: 'Your packs',
    loading: 'Opening the shelf…',
    private:
      'This is a private window: no pack can be added or switched here, and those of your ordinary windows don’t speak here. Open the workbench in an ordinary window to add one.',
    edition: (n: number) => `edition ${n}`,
    keptBy: (names: string) => `Kept by ${names}`,
    licence: (licence: string) => `Licence: ${licence}`,
    speaksOf: (thing: string) => `Speaks of: ${thing}`,
    installed: (date: string) => `installed ${date}`,
    onShort: 'Use this pack',
    remove: 'Remove',
    removed: (title: string) => `${title} was removed.`,
    undo: 'Put it back',
    unreadable: 'This pack can’t be read by this version of Bedplate, so it doesn’t speak.',
    missing:
      'The pack that comes with Bedplate could not be opened. Reload this page; if that doesn’t help, install Bedplate anew.',
    holds: (models: number, runs: number) =>
      [
        models > 0 ? counted(models, 'model', 'models') : '',
        runs > 0 ? counted(runs, 'run of serial numbers', 'runs of serial numbers') : '',
      ]
        .filter(Boolean)
        .join(', '),
    note: 'About this pack',
  },

  install: {
    heading: 'Add a pack',
    text: 'Choose a pack’s file, or drop it here. It is checked first; if anything is wrong with it, nothing is installed.',
    choose: 'Choose pack files',
    drop: 'or drop them here',
    reading: (file: string, done: number, all: number) => `Reading ${file}: ${done} of ${all} MB…`,
    readingSmall: (file: string) => `Reading ${file}…`,
    checking: (file: string) => `Checking ${file}… A large pack takes a while.`,
    keeping: 'Keeping it…',
    progress: 'How much has been read',
    cancel: 'Cancel',
    cancelled: 'Cancelled. Nothing was installed.',
    done: (titles: string) => `Installed: ${titles}.`,
    replaced: (title: string, before: number, after: number, otherText: boolean) => {
      if (before !== after) return `${title} (edition ${after} in place of ${before})`;
      return otherText
        ? `${title} (edition ${after} again, with another text under the same number)`
        : `${title} (edition ${after}, again)`;
    },
    fresh: (title: string, edition: number) => `${title} (edition ${edition})`,
    earlier: (title: string, edition: number, after: number) =>
      `${title}: this is edition ${edition}, and edition ${after} has been here already. An earlier edition has the mistakes that were mended since.`,
    goBack: (n: number) => (n === 1 ? 'Go back to this edition' : 'Go back to these editions'),
    leaveIt: 'Leave everything as it is',
    handedOver: (title: string, edition: number, from: string, to: string) =>
      `${title} has changed hands: from edition ${edition} on another key seals it, and both keys have signed that. Before: ${from}. Now: ${to}.`,
    refused: (n: number) =>
      `Nothing was installed: ${n === 1 ? 'the file is' : `${counted(n, 'file is', 'files are')}`} not in order.`,
    issuesIn: (file: string, n: number) => `${file}: ${counted(n, 'issue', 'issues')}`,
    path: 'Where',
    what: 'What is there',
    expected: 'What is expected',
    wholeFile: 'the whole file',
    more: (n: number) => `and ${n} more`,
  },

  troubles: {
    full: 'The browser’s space for this profile is used up, so this was not kept; what was kept before is still there. Free some space and try again.',
    denied:
      'This browser window doesn’t let extensions keep anything, as some private windows don’t. Use an ordinary window.',
    blocked: 'Another Bedplate page from before an update is still open. Close it and reload this page.',
    newer: 'The packs were kept by a newer Bedplate than this one. Update Bedplate.',
    failed: 'The browser’s storage did not answer. Reload this page.',
    memory:
      'The browser ran out of memory while it checked the file, so nothing was installed. Close other tabs and try again, or ask for a smaller pack.',
    gone: 'A pack that stood here is no longer kept: it was removed in another tab, or the browser’s data was cleared. If you still need it, add its file again.',
    broken: 'Something went wrong inside Bedplate. Reload this page; what is kept is not touched.',
  },
} as const;
