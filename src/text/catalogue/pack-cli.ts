/** What the command line says of packs; English, as all of the command line. */
export const packCliTexts = {
  usage: [
    'npm run -s pack -- check FILE ...',
    'schema [--out FILE]',
    'key --passphrase FILE --out FILE',
    'seal PACK --key FILE --passphrase FILE --out FILE [--over SEALED] [--expires YYYY-MM-DD] [--next FILE] [--old-key FILE --old-passphrase FILE]',
    'verify SEALED [--after SEALED] [--on YYYY-MM-DD]',
    'diff BEFORE AFTER [--json]',
    'propose BEFORE AFTER --key FILE --passphrase FILE --name NAME [--note TEXT] [--text] --out FILE',
    'merge BASE OURS THEIRS | merge PACK PROPOSAL ... [--rows] [--decisions FILE] --out FILE [--answers FOLDER --key FILE --passphrase FILE]',
    'publish SEALED --folder FOLDER',
  ].join(' | '),
  needs: (option: string, usage: string) => `${option} is missing; usage: ${usage}`,
  countOfFiles: (command: string, wanted: string, given: number, usage: string) =>
    `${command} takes ${wanted}, ${given} ${given === 1 ? 'was' : 'were'} given; usage: ${usage}`,
  none: 'no file',
  wanted: { one: 'one file', two: 'two files', pack: 'a pack and proposals, or three packs' },
  thereAlready: (path: string) => `${path}: is there already; --force writes over it`,
  wrote: (path: string, over: boolean) => (over ? `Wrote ${path}, over what was there` : `Wrote ${path}`),

  keyMade: (path: string, fingerprint: string) =>
    `Wrote ${path}, a key that its passphrase opens. Its fingerprint, to read out: ${fingerprint}. ` +
    'Keep a copy elsewhere: a lost key can’t be made again, and its packs end with it.',
  passphraseShort: (path: string, least: number) => `${path}: the passphrase needs ${least} characters or more`,
  notAKey: (path: string) => `${path}: no key of this format`,
  wrongPassphrase: (path: string) => `${path}: does not open with this passphrase, or was changed`,

  notSealed: (path: string) => `${path}: not a sealed pack`,
  notOpened: (path: string, what: string, expected: string) => `${path}: ${what}, expected ${expected}`,
  sealedFile: (id: string, edition: number, fingerprint: string) =>
    `pack ${id}, edition ${edition}, sealed by ${fingerprint}`,
  founded: (name: string, id: string) =>
    `A new pack: "${name}" is called ${id} from now on, and belongs to this key. Its next editions are sealed with --over this file.`,
  otherKey: (path: string, over: string) =>
    `${path}: ${over} is sealed by another key. Hand the pack over with --old-key and --old-passphrase; where the old key is lost, leave --over out: what is sealed then is a new pack`,
  notCommitted: (path: string) => `${path}: an earlier edition committed to another key than this one as the next`,
  otherLastDay: (path: string, said: string, sealed: string) =>
    `${path}: the pack says that this edition lasts until ${said}, and --expires says ${sealed}; say one of them, or the same`,
  otherPack: (path: string, id: string, expected: string) => `${path}: pack ${id}, expected ${expected}`,
  foreignId: (path: string, id: string) =>
    `${path}: the id ${id} is of another key; give the edition before with --over, or the pack a plain id for a new one`,
  editionGrows: (path: string, edition: number, before: number) =>
    `${path}: edition ${edition}, expected one above ${before}`,
  handedOver: (edition: number, from: string, to: string) =>
    `From edition ${edition}: handed over from ${from} to ${to}`,
  hash: (hash: string) => `SHA-256 of its canonical JSON: ${hash}`,
  expires: (day: string, over: boolean) =>
    over ? `Its time was over on ${day}: look for a newer edition` : `To be trusted until ${day}`,
  committed: 'It commits to the key that comes next',
  verdicts: {
    first: 'The first of this pack',
    same: 'The very edition that is there',
    newer: 'A later edition by the same key',
    'key-changed': 'A later edition by a key to which the pack was handed over',
  },
  rollback: (path: string, edition: number, known: number) =>
    `${path}: edition ${edition}, expected ${known} or a later one`,
  editions: (was: number, is: number) => `Edition ${was} -> ${is}`,

  noDifference: 'No difference.',
  entry: { added: '+', changed: '~', removed: '-', moved: '>' },
  field: (name: string, was: string | null, now: string | null) =>
    `    ${name}: ${was ?? 'nothing'} -> ${now ?? 'nothing'}`,
  more: (count: number) => `and ${count} more; --json lists all`,

  nothingToPropose: 'there is no difference that could be proposed',
  proposed: (path: string, changes: number) =>
    `Wrote ${path}: ${changes} ${changes === 1 ? 'change' : 'changes'} for the keeper to weigh`,
  notAProposal: (path: string) => `${path}: no proposal, or not as its author signed it`,
  proposalForOther: (path: string, pack: string, id: string) => `${path}: for pack ${pack}, not for ${id}`,
  tooManyChanges: (count: number, most: number) => `${count} changes: a proposal holds at most ${most}`,
  badNameOrNote: '--name and --note are text of 1 to 2000 characters, without control characters',
  theirs: 'THEIRS',
  conflict: (place: string, here: string, offers: string) => `${place}: here ${here}; ${offers}`,
  offer: (who: string, now: string) => `${who} wants ${now}`,
  whole: { add: 'it added', remove: 'it gone', move: 'it elsewhere' },
  nothing: 'nothing',
  undecided: (count: number) =>
    `${count} ${count === 1 ? 'place is' : 'places are'} undecided, so that nothing was written; --rows lists them for a --decisions file`,
  cannot: (place: string) => `${place}: this decision can’t be carried out beside the others`,
  mergedIssues: (count: number, where: string, what: string, expected: string) =>
    `taken together the changes make no pack: ${count === 1 ? '1 issue' : `${count} issues, the first`} at ${where}: ${what}, expected ${expected}`,
  badDecisions: (path: string) =>
    `${path}: not decisions: an object of slots, each {"do":"accept","offer":0}, {"do":"edit","now":...,"reason":"..."} or {"do":"decline","reason":"..."}`,
  unknownSlot: (path: string, slot: string) => `${path}: no row has the slot ${slot}`,
  unknownOffer: (path: string, slot: string, offer: number) => `${path}: ${slot} has no offer ${offer}`,
  merged: (path: string, taken: number, over: boolean) =>
    `Wrote ${path}${over ? ', over what was there' : ''}: ${taken} ${taken === 1 ? 'place' : 'places'} changed`,

  published: (folder: string, edition: number, before: number | null) =>
    before === null
      ? `${folder}: edition ${edition} is the one that is published`
      : `${folder}: edition ${edition} is published in place of ${before}`,
  publishedAlready: (folder: string, edition: number) => `${folder}: edition ${edition} is published already`,
  wroteFile: (name: string, bytes: number) => `  ${name} (${bytes} bytes)`,
  otherNotice: (path: string) => `${path}: is no notice of this pack; give every pack a folder or a name of its own`,
  lostFile: (path: string) => `${path}: names a file that isn’t beside it`,
} as const;
