import { putCompiled, readCompiled } from '../../../src/keep/compiled';
import { type Database, openKeep } from '../../../src/keep/open';
import { putPacks, readText } from '../../../src/keep/packs';
import type { Kept } from '../../../src/keep/trouble';
import { knowledgeOf } from '../../../src/pack/compile/knowledge-of';
import { partsOf } from '../../../src/pack/compile/parts-of';
import { contentHash } from '../../../src/pack/compiled/content-hash';
import { partsStored } from '../../../src/pack/compiled/read';
import { bytesOf } from '../../../src/pack/compiled/write';
import type { Knowledge } from '../../../src/pack/knowledge';
import { parsePack } from '../../../src/pack/parse';
import { tokenise } from '../../../src/text/tokens';
import { largePack } from './large-pack';

// Runs in the browser that is measured, in a thread as the engine's. What is kept, read and asked goes through the same files as in the extension.

const ENGINE = 'measured';
const ID = 'whole-trade';
const PHRASE = 'A sewing machine with a vibrating shuttle in cast iron';

export interface Sizes {
  text: number;
  compiled: number;
  /** Milliseconds to read, check and make ready from the text, and to keep it. */
  make: number;
  hash: string;
}

/** Puts a pack and what is made of it into this browser's storage. */
async function install(models: number, runs: number): Promise<Sizes> {
  const text = JSON.stringify(largePack(models, runs));
  const db = await keep();
  const begun = performance.now();
  const { pack, issues } = parsePack(text);
  if (!pack) throw new Error(JSON.stringify(issues[0]));
  const hash = await contentHash(text);
  const bytes = bytesOf(partsOf(pack));
  const make = performance.now() - begun;
  value(await putPacks(db, [{ id: ID, edition: 1, installedAt: '', text, hash }]));
  value(await putCompiled(db, [{ engine: ENGINE, hash, bytes: bytes.buffer }]));
  db.close();
  return { text: text.length, compiled: bytes.length, make, hash };
}

/** Milliseconds to get the text and parse it as JSON: nothing is checked, indexed or asked. */
async function byText(): Promise<{ get: number; all: number }> {
  const db = await keep();
  const begun = performance.now();
  const text = value(await readText(db, ID));
  const got = performance.now();
  const data = JSON.parse(text!) as { schema: number };
  const all = performance.now() - begun;
  if (data.schema !== 1) throw new Error('not the pack');
  db.close();
  return { get: got - begun, all };
}

/** Milliseconds from asking for what lies ready to the first number's run with its source, and the first phrases. */
async function byBytes(hash: string, serial: string): Promise<{ get: number; open: number; all: number }> {
  const db = await keep();
  const begun = performance.now();
  const stored = value(await readCompiled(db, ENGINE, hash));
  const got = performance.now();
  const parts = partsStored(stored!, false);
  const opened = performance.now();
  const known = knowledgeOf([parts!], new Map());
  answer(known, serial);
  const all = performance.now() - begun;
  db.close();
  return { get: got - begun, open: opened - got, all };
}

function answer(known: Knowledge, serial: string): void {
  const [run] = known.serials.find(serial);
  if (!run?.source || run.models.length === 0) throw new Error(`no run with a source holds ${serial}`);
  const kinds = known.phrases.search(tokenise(PHRASE)).map((match) => match.value.meaning.kind);
  if (!kinds.includes('thing') || !kinds.includes('value')) throw new Error(`only ${kinds} found`);
}

async function keep(): Promise<Database> {
  return value(await openKeep());
}

function value<T>(kept: Kept<T>): T {
  if (!kept.ok) throw new Error(kept.trouble);
  return kept.value;
}

const tasks = { install, byText, byBytes };

addEventListener('message', async ({ data: [task, ...args] }: MessageEvent<[keyof typeof tasks, ...never[]]>) => {
  try {
    postMessage({ value: await (tasks[task] as (...args: never[]) => Promise<unknown>)(...args) });
  } catch (error) {
    postMessage({ error: String(error) });
  }
});
