/** What the command line and the demo say. */
export const cli = {
  usage: {
    audit:
      'npm run -s audit -- PAGE.html | --draft FILE [--pack FILE ...] [--as-of YYYY-MM-DD] [--url ADDRESS] [--explain] [--json]',
    read: 'npm run -s read -- PAGE.html [--url ADDRESS] [--as-of DATE] [--json]',
  },
  bad: {
    unknownOption: (option: string, usage: string) => `unknown option ${option}; usage: ${usage}`,
    optionNeedsValue: (option: string, usage: string) => `${option} needs a value; usage: ${usage}`,
    optionTakesNoValue: (option: string, usage: string) => `${option} takes no value; usage: ${usage}`,
    noInput: (usage: string) => `nothing to read; usage: ${usage}`,
    both: 'a page and a draft were given: give one of them',
    tooMany: (count: number) => `${count} pages were given: give one`,
    draftTakesNoUrl: '--url belongs to a page, not to a draft',
    noFile: (path: string) => `${path}: no such file`,
    folder: (path: string) => `${path}: this is a folder, not a file`,
    notAllowed: (path: string) => `${path}: no permission to read it`,
    unreadable: (path: string, why: string) => `${path}: can't be read (${why})`,
    unwritable: (path: string, why: string) => `${path}: can't be written (${why})`,
    notText: (path: string) => `${path}: not UTF-8 text`,
    tooLarge: (path: string) => `${path}: larger than 100 MB`,
    date: (option: string, value: string) => `${option}: "${value}" is not a day such as 2026-03-14`,
    url: (value: string) => `--url: "${value}" is not an address that begins with https:// or http://`,
    draft: (path: string, what: string) => `${path}: ${what}`,
    pack: (path: string, count: number, where: string, what: string, expected: string) =>
      `${path}: not a pack: ${count === 1 ? '1 issue' : `${count} issues, the first`}${where ? ` at ${where}` : ''}: ` +
      `${what}, expected ${expected}`,
    packCommand: (value: string, usage: string) => `unknown command "${value}"; usage: ${usage}`,
    page: (path: string, why: string) => `${path}: can't be read as a page (${why})`,
  },
  internal: (what: string) => `Bedplate itself failed: ${what}`,
  audit: {
    draft: (id: string) => `Draft ${id}`,
    untitled: '(no title)',
    kinds: {
      item: 'The thing itself',
      part: 'A part or accessory',
      wanted: 'A wanted advert',
      lot: 'A job lot',
      service: 'A service',
      list: 'A list of adverts',
      none: 'No advert found',
    },
    facts: {
      kind: 'Kind',
      price: 'Price',
      claims: 'Claims to be',
      serial: 'Serial',
      condition: 'Condition',
      place: 'Place',
      packs: 'Held against',
    },
    hows: { asking: 'asked', bid: 'bid so far', sold: 'sold for', from: 'from' },
    noPrice: 'none stated',
    noClaim: 'no model is named',
    noSerial: 'none given',
    noPack: 'no pack',
    currencyOpen: 'currency not settled',
    verdicts: {
      fits: 'fits',
      'another-model': 'belongs to another model',
      'another-year': 'belongs to another year',
      unknown: 'in no known run',
      misread: 'in no known run as written',
      'bad-form': 'not of a known form',
      none: 'none given',
    },
    standings: {
      disproved: "Doesn't hold",
      unproved: 'Not shown yet',
      caution: 'Mind this',
      agrees: 'Agrees',
    },
    summary: {
      nothing: 'Nothing in this advert could be held against what the packs know.',
      parts: {
        disproved: (n: number) => `${n} ${n === 1 ? "statement doesn't" : "statements don't"} hold`,
        unproved: (n: number) => `${n} ${n === 1 ? 'is' : 'are'} not shown yet`,
        caution: (n: number) => `${n} to mind`,
        agrees: (n: number) => `${n} ${n === 1 ? 'agrees' : 'agree'} with what is known`,
      },
    },
    said: 'said',
    known: 'known',
    nothingSaid: 'the advert says nothing',
    fields: {
      title: 'title',
      description: 'description',
      details: 'details',
      condition: 'condition',
      serials: 'serial',
      price: 'price',
    },
    likely: 'Most likely',
    likelyNone: 'none of these',
    ask: 'Ask the seller',
    where: 'where to look',
    price: {
      heading: 'Price',
      standings: {
        below: 'Below the band: lower than such a thing usually goes for.',
        'low-side': 'On the low side of the band.',
        within: 'Within the band.',
        'high-side': 'On the high side of the band.',
        above: 'Above the band: more than such a thing usually goes for.',
        'not-comparable': "Can't be compared with a band.",
        'no-band': 'No pack has a band for it.',
      },
      band: (low: string, mid: string, high: string, currency: string) =>
        `Eight in ten such sales lie between ${low} and ${high} ${currency}, half of them below ${mid}.`,
      ratio: (ratio: string) => `The price is ${ratio} times the middle.`,
      half: (low: string, high: string) => `The middle half: ${low} to ${high}.`,
      of: { asked: 'It is of prices asked.', paid: 'It is of prices paid; asked is more.' },
      stands: (observations: number, effective: string) =>
        observations === 0
          ? `The band is as the pack states it, worth as much as ${effective} observed sales.`
          : `Behind the band: ${observations} ${observations === 1 ? 'observation' : 'observations'}; all that is known is worth ${effective}.`,
    },
    pack: (id: string, edition: number, sealedBy: string | null) =>
      `${id}, edition ${edition} (${sealedBy ? `sealed by ${sealedBy}` : 'not sealed'})`,
  },
  read: {
    fields: {
      title: 'Title',
      price: 'Price',
      serial: 'Serial',
      condition: 'Condition',
      place: 'Place',
      listedDate: 'Listed',
      sale: 'Sale',
      seller: 'Seller',
      photo: 'Photos',
      details: 'Details',
      description: 'Description',
      language: 'Language',
      offers: 'Adverts on it',
    },
    sales: { sold: 'sold', reserved: 'reserved' },
    sellers: { private: 'private', trade: 'trade' },
    none: '-',
    from: (source: string, confidence: string) => `from ${source}, confidence ${confidence}`,
    lost: (value: string, source: string) => `also read: ${value} (${source})`,
    sources: {
      'json-ld': 'JSON-LD',
      microdata: 'microdata',
      rdfa: 'RDFa',
      state: 'embedded page state',
      meta: 'page metadata',
      page: 'the visible page',
      draft: 'the draft',
      user: 'the user',
    },
  },
  pack: {
    good: (path: string, id: string, edition: number, models: number, runs: number) =>
      `${path}: pack ${id}, edition ${edition}: ${models} ${models === 1 ? 'model' : 'models'}, ` +
      `${runs} serial ${runs === 1 ? 'run' : 'runs'}, no issues`,
    issue: (path: string, where: string, what: string, expected: string) =>
      `${path}: ${where ? `${where}: ` : ''}${what}, expected ${expected}`,
    badFiles: (bad: number, all: number) =>
      all === 1 ? 'the file is not a pack that can be used' : `${bad} of ${all} files can't be used`,
  },
  demo: {
    building: 'Building the extension ...',
    buildFailed: 'the extension could not be built',
    noPage: (page: string, pages: string) =>
      `the market has no page "${page}"; ${pages ? `it has: ${pages}` : 'it has none'}`,
    didNotStart: (what: string) => `The browser did not start: ${what}`,
    open: (url: string) =>
      `Open: ${url}, its audit in the side panel. Close the browser, or press Ctrl+C here, to end.`,
    panelSays: (url: string) => `The side panel, after a press of the toolbar button on ${url}:`,
    pictures: (paths: string) => `Pictures of it: ${paths}`,
    laidOut: (command: string) => `The same audit for a terminal (${command}):`,
    installing: (name: string) => `No ${name} found here: installing it with apt-get (about half a minute) ...`,
    namedCannotRun: (variable: string, path: string) => `${variable} names ${path}, which can't be run.`,
    howToGetFirefox:
      'No Firefox on this machine: install one (Debian: apt-get install firefox-esr; Ubuntu: snap install firefox; ' +
      'Fedora: dnf install firefox; macOS: brew install --cask firefox; Windows: winget install Mozilla.Firefox), ' +
      'or name one in BEDPLATE_FIREFOX.',
    howToGetBrowser:
      'No Chromium on this machine: install one (Debian: apt-get install chromium; Ubuntu: snap install chromium; ' +
      'Fedora: dnf install chromium; macOS: brew install --cask chromium; Windows: winget install Hibbiki.Chromium), ' +
      'or name one in BEDPLATE_BROWSER.',
  },
} as const;
