/** What the panel says where there is no audit: what is so, and what to do. */
export const panelStates = {
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
} as const;
