import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { parseSync } from 'vite';
import { failedOne, passedOne, sum, type Tally } from './tally';

/** What a part of the built extension may weigh: bytes after gzip, each file by itself, at the strongest level. */
export interface Budget {
  name: string;
  most: number;
  why: string;
  files: (build: string) => string[];
}

/** What rooms of the workbench fetch on demand, by the names of the scripts. */
const PARTS: Readonly<Record<string, { parts: readonly string[]; why: string }>> = {
  drafts: {
    parts: ['DraftAnswered', 'SideBySide', 'RunLine', 'OutlineDrawing', 'OptionDrawing'],
    why: 'it is fetched while the first words of a draft are audited',
  },
  enquiry: {
    parts: ['MachineOutcome', 'WrittenAnswer', 'EnquiryResult', 'SideBySide', 'OutlineDrawing', 'OptionDrawing'],
    why: 'it is fetched while the first thing that was said of a machine is compared',
  },
  prices: {
    parts: ['SeenTable', 'BringTable', 'bring-table', 'table'],
    why: 'it is fetched where somebody opens the table of prices, here or in the panel, or brings one',
  },
  packs: {
    parts: ['OwnPart', 'KeeperPart'],
    why: 'it is fetched where somebody corrects something in a pack, or keeps one',
  },
};

const CHECKING = /\b(?:parse|open-text|install-files)-/;
const SEALS = /\b(?:open-seal|edition-ref|signature)-/;

export const BUDGETS: readonly Budget[] = [
  {
    name: 'reader',
    most: 12_000,
    why: 'it is injected into a page that the user waits for, on every press of the button',
    files: (build) => scriptsFrom(build, ['reader.js']),
  },
  {
    name: 'side panel',
    most: 60_000,
    why: 'all of it is parsed before the first word of an audit shows, on old machines as well',
    files: (build) => filesOfPage(build, 'sidepanel.html'),
  },
  {
    name: 'engine, in its own thread',
    // Packs opened page by page took 2 kB for half the time to a first answer, the words of stances in three languages the
    // rest: each kilobyte of them takes back false accusations of adverts held against packs that nobody has read before.
    most: 165_500,
    why: 'the panel waits for it before the first audit, though it shows and stays quick without it',
    files: engineItself,
  },
  {
    name: 'reading of what a page said, fetched by the panel’s engine',
    // Real pages tell a price and the seller's words in more ways than made ones, and each way is a few more words. What
    // stands together on a page, by which an advert is told from the sale or the site around it, took 1.5 kB.
    most: 52_200,
    why: 'it is fetched with the first page of a panel, while that page is read',
    files: (build) => engineFetches(build, /\bpage-answer-/),
  },
  {
    name: 'checking of packs, fetched by the engine on demand',
    most: 28_000,
    why: 'it is fetched where a pack is installed, or doesn’t lie ready after an update of the program',
    files: (build) => engineFetches(build, CHECKING),
  },
  {
    name: 'opening of seals, fetched by the engine on demand',
    most: 5_000,
    why: 'it is fetched with the first sealed file, beside what checks packs',
    files: (build) => scriptsIn(build).filter((file) => SEALS.test(file)),
  },
  {
    name: 'looking at what is published, and correcting packs, fetched by the engine on demand',
    most: 20_000,
    why: 'it is fetched where an edition is looked at or a pack is corrected, beside what checks packs',
    files: (build) => {
      // What checks packs and opens seals is weighed by itself.
      const others = new Set([...engineFetches(build, CHECKING), ...engineFetches(build, SEALS)]);
      return engineFetches(build, /\b(?:look-at|own-answers|open-layered|keeper-answers)-/).filter(
        (file) => !others.has(file),
      );
    },
  },
  ...['packs', 'drafts', 'enquiry', 'sheets', 'prices'].map((room) => ({
    name: `workbench with its room ${room}`,
    most: 60_000,
    why: 'it opens from the panel, in the middle of a thought',
    files: (build: string) => filesOfRoom(build, 'workbench.html', room),
  })),
  {
    name: 'parts of the side panel, fetched on demand',
    most: 15_000,
    why: 'they are fetched with the first question, candidates to compare, or a number to draw',
    files: (build) => {
      const there = new Set(filesOfPage(build, 'sidepanel.html'));
      const onDemand = scriptsIn(build).filter((file) =>
        ['SideBySide', 'RunLine', 'OutlineDrawing', 'OptionDrawing'].includes(nameOf(file)),
      );
      return scriptsFrom(build, onDemand).filter((file) => !there.has(file));
    },
  },
  ...Object.entries(PARTS).map(([room, { parts, why }]) => ({
    name: `parts of the room ${room}, fetched on demand`,
    most: 36_000,
    why,
    files: (build: string) => {
      const there = new Set(filesOfRoom(build, 'workbench.html', room));
      const onDemand = scriptsIn(build).filter((file) => parts.includes(nameOf(file)));
      return scriptsFrom(build, onDemand).filter((file) => !there.has(file));
    },
  })),
  {
    name: 'viewing sheets, fetched by the engine on demand',
    most: 8_000,
    why: 'it is fetched where somebody goes to see a machine',
    files: (build) => engineFetches(build, /\bsheet-answer-/),
  },
  {
    name: 'answers about prices, fetched by the engine on demand',
    most: 10_000,
    why: 'it is fetched where the room of prices is opened',
    files: (build) => engineFetches(build, /\bprice-answers-/),
  },
  {
    name: 'background',
    most: 20_000,
    why: 'the browser starts it anew for every press of the button after a rest',
    files: (build) => scriptsFrom(build, ['background.js']),
  },
];

/** Weighs a build. A part that isn't there has failed its budget. */
export function checkBudgets(build: string, budgets = BUDGETS, say: (line: string) => void = console.log): Tally {
  const weighed = new Set<string>();
  const tallies = budgets.map((budget) => {
    let files: string[];
    try {
      files = budget.files(build);
      if (files.length === 0) throw new Error('nothing of it is in the build');
      for (const file of files) weighed.add(file);
    } catch (error) {
      return failedOne(`failed: budget of the ${budget.name}: ${error instanceof Error ? error.message : error}`);
    }
    const bytes = files.reduce((all, file) => all + gzipSync(readFileSync(join(build, file)), { level: 9 }).length, 0);
    const line = `${budget.name}: ${bytes} of ${budget.most} bytes (${files.join(', ')})`;
    say(line);
    return bytes <= budget.most ? passedOne() : failedOne(`failed: budget: ${line}; it is kept because ${budget.why}`);
  });
  return sum([...tallies, unweighed(build, weighed)]);
}

/** A script that no budget weighs would be a way around them all. */
function unweighed(build: string, weighed: ReadonlySet<string>): Tally {
  const left = scriptsIn(build).filter((file) => !weighed.has(file));
  return left.length === 0 ? passedOne() : failedOne(`failed: budget: no budget weighs ${left.join(', ')}`);
}

/** The engine's thread with all that it imports at once. */
function engineItself(build: string): string[] {
  return scriptsFrom(
    build,
    scriptsIn(build).filter((file) => /\.worker\b/.test(file)),
  );
}

/** What the engine fetches on demand: such scripts with what they import, save what is there with the engine already. */
function engineFetches(build: string, names: RegExp): string[] {
  const there = new Set(engineItself(build));
  const onDemand = scriptsIn(build).filter((file) => names.test(file));
  return scriptsFrom(build, onDemand).filter((file) => !there.has(file));
}

function scriptsIn(build: string): string[] {
  return filesIn(build).filter((name) => name.endsWith('.js'));
}

function filesIn(build: string): string[] {
  if (!existsSync(build)) return [];
  return readdirSync(build, { recursive: true, encoding: 'utf8' }).map((name) => name.replaceAll('\\', '/'));
}

/** The scripts and style sheets that a page loads by itself: those that it names, and all that these import. */
function filesOfPage(build: string, page: string): string[] {
  const html = readFileSync(join(build, page), 'utf8');
  const named = [...html.matchAll(/<(?:script|link)\b[^>]*?\b(?:src|href)="([^"]+)"/g)].map(([, address = '']) =>
    address.startsWith('/') ? address.slice(1) : join(dirname(page), address),
  );
  const scripts = named.filter((name) => name.endsWith('.js'));
  if (scripts.length === 0) throw new Error(`${page} names no script`);
  return [...new Set([...scriptsFrom(build, scripts), ...named.filter((name) => name.endsWith('.css'))])];
}

/**
 * What a page has loaded once one of its rooms is in front: all that it loads by itself, and the room's script, which it
 * imports on demand, with all that this imports and the style sheets that belong to any of these.
 */
function filesOfRoom(build: string, page: string, room: string): string[] {
  const atOnce = filesOfPage(build, page);
  const chunks = atOnce.filter((file) => file.endsWith('.js')).flatMap((file) => onDemand(build, file));
  const door = chunks.find((file) => nameOf(file) === room);
  if (door === undefined) throw new Error(`${page} imports no room ${room}`);
  const scripts = scriptsFrom(build, [door]);
  const names = new Set(scripts.map(nameOf));
  const styles = filesIn(build).filter((file) => file.endsWith('.css') && names.has(nameOf(file)));
  return [...new Set([...atOnce, ...scripts, ...styles])];
}

/** The scripts that one imports on demand. */
function onDemand(build: string, file: string): string[] {
  const text = readFileSync(join(build, file), 'utf8');
  return parseSync(file, text).module.dynamicImports.flatMap(({ moduleRequest: { start, end } }) => {
    const source = text.slice(start, end).match(/^["'`](.+)["'`]$/)?.[1];
    return source === undefined ? [] : [join(dirname(file), source).replaceAll('\\', '/')];
  });
}

/** "chunks/drafts-0oWx2Iq1.js" -> "drafts": a script and the style sheet that belongs to it have the same. */
function nameOf(file: string): string {
  return basename(file).replace(/-[\w-]{8}\.\w+$/, '');
}

/** Scripts with everything that they import at once; what is imported later, on demand, is not counted. */
function scriptsFrom(build: string, first: string[]): string[] {
  const found = new Set<string>();
  const waiting = [...first];
  for (let file = waiting.pop(); file !== undefined; file = waiting.pop()) {
    if (found.has(file)) continue;
    const path = join(build, file);
    if (!existsSync(path)) throw new Error(`${file} is not in the build`);
    found.add(file);
    const { module } = parseSync(file, readFileSync(path, 'utf8'));
    const sources = [
      ...module.staticImports.map((each) => each.moduleRequest.value),
      ...module.staticExports.flatMap((each) => each.entries.flatMap((entry) => entry.moduleRequest?.value ?? [])),
    ];
    for (const source of sources) {
      waiting.push(source.startsWith('/') ? source.slice(1) : join(dirname(file), source));
    }
  }
  return [...found].sort();
}
