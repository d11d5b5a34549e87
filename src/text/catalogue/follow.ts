import { counted } from './words';

/** Following packs: where one is published, what a newer edition changes, and what keeps it from being taken. */
export const followTexts = {
  form: {
    heading: 'Follow a pack',
    text: 'A club that publishes its pack tells you an address; it ends in “.notice.json”. Bedplate then asks there once a day whether there is a newer edition, and nowhere else. It says what an edition changes before you take it.',
    label: 'Address of the pack’s notice',
    button: 'Look what is there',
    leave:
      'Your browser will ask whether Bedplate may fetch from that host. What the host learns: that somebody at your internet address asks.',
  },
  problems: {
    'not-an-address': 'That is no address. Paste it as the club gives it, beginning with https://.',
    'not-https':
      'Only addresses that begin with https:// are taken: on others anybody on the way can read along and hold editions back.',
    'carries-a-name':
      'There is a name or a password in that address, which would tell the host who asks. Leave it out.',
    'no-leave':
      'Your browser doesn’t let Bedplate fetch from that host, so nothing was fetched. Press the button again to be asked for leave.',
    unreachable: 'The host could not be reached.',
    moved:
      'The host sends elsewhere, and Bedplate doesn’t follow: ask the club for the address where the notice stands now.',
    missing: 'The host has nothing at that address.',
    busy: 'The host asks for patience.',
    refused: 'The host refused, or has a fault.',
    'too-large': 'What came was larger than it may be, or than the notice says, so it was cut off and thrown away.',
    stalled: 'The host stopped sending.',
    'not-text': 'What came is no text.',
    'no-notice':
      'What stands there is no notice of a pack. If it is the pack itself, save it as a file and choose that below.',
    'other-pack': 'The notice there is another pack’s.',
    older:
      'The host offers an earlier edition than has been here already. Nothing was changed: whoever holds back an edition, or puts an old one in its place, gets no further than this. If you want to go back, choose that edition’s file below.',
    'other-bytes':
      'The file is not the one that the notice names: it was damaged on the way, or put there by somebody else.',
    'not-as-said': 'The file holds another edition than the notice says.',
    'is-shipped': 'That id belongs to a pack that came with Bedplate.',
  },
  asking: 'Asking what is there…',
  fetching: (done: number, all: number) => `Fetching: ${done} of ${all} kB…`,
  checking: 'Proving the seal and comparing with what is here…',
  progress: 'How much has been fetched',
  cancel: 'Cancel',
  refused: 'This edition can’t be taken:',
  nothingNew: (edition: number) => `Nothing new: edition ${edition} is what is here.`,
  offer: {
    title: (title: string, edition: number) => `${title}, edition ${edition}`,
    first: (host: string) => `From ${host}. Nothing of it is here yet.`,
    newer: (here: number) => `Edition ${here} is here.`,
    isHere: 'The very same text is here already; it can be followed from now on.',
    otherText: 'Mind this: another text is here under the same number. A keeper gives each text a number of its own.',
    sealed: (fingerprint: string) =>
      `Sealed by the key ${fingerprint}. Compare these digits with those that the club has published elsewhere.`,
    sealedAsBefore: (fingerprint: string) => `Sealed by the key that is known, ${fingerprint}.`,
    unsealed: 'Unsealed: nothing proves who wrote it, or that the host didn’t change it.',
    expires: (date: string) => `To be followed by another edition by ${date}.`,
    expired: (date: string) =>
      `It was to be followed by another edition by ${date}, and that day has passed: the host may be holding one back.`,
    holds: (models: number, runs: number) =>
      `It knows ${counted(models, 'model', 'models')} and ${counted(runs, 'run of serial numbers', 'runs of serial numbers')}.`,
    keptBy: (names: string) => `Kept by ${names}.`,
    licence: (licence: string) => `Licence: ${licence}.`,
    fetched: (kB: number, whole: number) =>
      kB < whole ? `Fetched: ${kB} kB instead of ${whole}.` : `Fetched: ${kB} kB.`,
    take: 'Take this edition',
    follow: 'Take and follow it',
    followOnly: 'Follow it',
    leave: 'Leave it',
  },
  changes: {
    heading: 'What it changes',
    none: 'Nothing but the edition’s number.',
    summary: (added: number, changed: number, removed: number) =>
      [
        added > 0 ? counted(added, 'entry is new', 'entries are new') : '',
        changed > 0 ? counted(changed, 'entry is changed', 'entries are changed') : '',
        removed > 0 ? counted(removed, 'entry is removed', 'entries are removed') : '',
      ]
        .filter(Boolean)
        .join(', '),
    entry: (kind: string, part: string, name: string) => `${kind}, ${part}: ${name}`,
    more: (n: number) => `and ${n} more`,
  },
  followed: {
    at: (host: string) => `Followed at ${host}`,
    never: 'Not checked yet.',
    checked: (when: string) => `Last checked ${when}.`,
    same: 'This is the newest edition.',
    overdue: (date: string) =>
      `This edition was to be followed by another one by ${date}, and the host has none: it may be held back. Ask the club.`,
    newer: (edition: number) => `Edition ${edition} is there.`,
    left: (edition: number) => `Edition ${edition} is there; you have left it.`,
    older: (edition: number) =>
      `The host names edition ${edition}, which is earlier than what has been here already. Nothing was changed. If that lasts, ask the club.`,
    otherText: (edition: number) =>
      `The host has another file under the number of edition ${edition}, which is here. Two texts under one number are a mistake or a trick: look at it, and ask the club.`,
    failed: (when: string, why: string) => `Tried ${when}, without success. ${why}`,
    noLeave:
      'Your browser’s leave to fetch from this host is missing, so nothing is checked. “Check now” asks for it again.',
    check: 'Check now',
    checking: 'Checking…',
    see: (edition: number) => `See what edition ${edition} changes`,
    seeOther: 'Look at it',
    stop: 'Follow no longer',
  },
  over: (date: string) =>
    `This edition was to be followed by another one by ${date}. It still speaks; look for a newer one, or ask its keeper.`,
  outcome: {
    taken: (title: string, edition: number) => `${title}, edition ${edition}, is here now and is followed.`,
    left: (title: string, edition: number) => `${title}, edition ${edition}, was left. Nothing was changed.`,
    stopped: (title: string) => `${title} is followed no longer. The pack stays as it is.`,
    stale: 'The pack has changed in another window since this was looked at. Look at it again.',
    gone: 'This was taken or left in another window. Look at it again if you still want it.',
  },
} as const;
