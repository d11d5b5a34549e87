import { readObservations } from '../../src/keep/observations';
import { readRates } from '../../src/keep/rates';
import type { Kept } from '../../src/keep/trouble';
import type { Knowledge } from '../../src/pack/knowledge';
import { type Answer, answerByHand, answerToDraft, type OwnPrices } from '../../src/session/answer';
import type { FromEngine, Question, Replies, ToEngine } from '../../src/session/engine-messages';
import { answerToEnquiry } from '../../src/session/enquiry';
import { priceOfKept } from '../../src/session/kept-prices';
import { rateOfKept } from '../../src/session/kept-rates';
import { mending } from '../../src/session/mending';
import { cardOf, type PackCard } from '../../src/session/pack-card';
import { knowledgeOf } from '../../src/session/packs';
import { withKeep } from './keep';
import { readShelf } from './shelf';

// The engine in a thread of its own: however large the packs are, our pages answer to a finger. It reads the packs
// itself, so that neither they nor the code that checks them stand in a page.
const tell = (message: FromEngine) => postMessage(message);

interface Packs {
  cards: PackCard[];
  knowledge: Knowledge;
  /** Ids of those that came with the program. */
  shipped: ReadonlySet<string>;
  /** Prices and rates that the user has kept. */
  prices: OwnPrices;
}

/** The packs as they were last read, and which reading of them that was. */
let stamp = 0;
let packs: Promise<Kept<Packs>> | undefined;
let speaking: Packs | null = null;

/** @param whole see loadShelf */
async function load(whole = false): Promise<Kept<Packs>> {
  const shelf = await readShelf(whole);
  if (!shelf.ok) return shelf;
  const [seen, typed] = [await withKeep(readObservations), await withKeep(readRates)];
  // Packs speak even where nothing can be read of what was kept.
  const prices: OwnPrices = {
    observations: seen.ok ? seen.value.map(priceOfKept) : [],
    rates: typed.ok ? typed.value.map(rateOfKept) : [],
  };
  return mending(
    shelf.value,
    () => readShelf(true),
    (all) => {
      const shipped = new Set(all.flatMap((pack) => (pack.shipped ? [pack.id] : [])));
      return { cards: all.map(cardOf), knowledge: knowledgeOf(all), shipped, prices };
    },
  );
}

async function readPacks(): Promise<void> {
  stamp += 1;
  const mine = stamp;
  packs = load();
  const read = await packs;
  // A later change was announced in the meantime: its own reading tells.
  if (mine !== stamp) return;
  if (!read.ok) return tell({ type: 'packsFailed', trouble: read.trouble });
  speaking = read.value;
  tell({ type: 'packsReady', stamp });
}

/** The packs as they are by now, however often they change while they are read. */
async function newestPacks(): Promise<Kept<Packs>> {
  for (;;) {
    packs ??= load();
    const awaited = packs;
    const read = await awaited;
    if (awaited === packs) return read;
  }
}

/** The packs read anew, with a look at all that lies ready: what of it is damaged is made anew. */
async function mendedPacks(): Promise<Kept<Packs>> {
  packs = load(true);
  const read = await newestPacks();
  if (read.ok && speaking) speaking = read.value;
  return read;
}

async function reply(number: number, question: Question): Promise<void> {
  const read = await newestPacks();
  const reply = read.ok ? await mending(read.value, mendedPacks, (all) => answer(question, all)) : read;
  tell({ type: 'reply', number, reply });
}

async function answer(
  question: Question,
  { cards, knowledge: known, shipped, prices }: Packs,
): Promise<Replies[keyof Replies]> {
  switch (question.about) {
    case 'shelf':
      return cards;
    case 'draft':
      return answerToDraft(question.draft, question.asOf, known, question.seen, shipped, prices);
    case 'machine':
      return answerByHand(question.described, question.asOf, known, question.seen, shipped, prices);
    case 'sheet': {
      const { answerToSheet } = await import('../../src/session/sheet-answer');
      return answerToSheet(question.listing, question.asOf, known, question.seen, shipped, prices);
    }
    case 'desk':
    case 'publish': {
      const { answerKeeper } = await import('./keeper-answers');
      return answerKeeper(question);
    }
    case 'own':
    case 'correction':
    case 'proposal': {
      // Asked in one room alone, where somebody corrects a pack.
      const { answerOwn } = await import('./own-answers');
      return answerOwn(question);
    }
    case 'serial':
      return answerToEnquiry(question.serial, question.pack, known, shipped);
    case 'priceModels':
    case 'price':
    case 'past': {
      // Asked in one room alone, and by no panel.
      const { answerToPrice } = await import('../../src/session/price-answers');
      return answerToPrice(question, known, prices);
    }
  }
}

type Audited = Extract<ToEngine, { type: 'audit' }>;

/** How pages are read is fetched by the panel's thread alone: the workbench reads none. */
async function audited({ harvest, asOf, seen }: Audited, all: Packs): Promise<Answer> {
  try {
    const { answerTo } = await import('../../src/session/page-answer');
    const answered = await mending(all, mendedPacks, ({ knowledge, shipped, prices }) =>
      answerTo(harvest, asOf, knowledge, seen, shipped, prices),
    );
    return answered.ok ? answered.value : { ok: false, problem: answered.trouble };
  } catch (error) {
    return { ok: false, problem: String(error) };
  }
}

async function look({ address, followed }: Extract<ToEngine, { type: 'look' }>): Promise<void> {
  try {
    const { lookAt } = await import('./look-at');
    await lookAt(address, followed, (step) => tell({ type: 'looking', step }));
  } catch (error) {
    tell({ type: 'looking', step: troubled(error) });
  }
}

type Install = Extract<ToEngine, { type: 'install' }>;

async function install({ files, ...installation }: Install): Promise<void> {
  try {
    const { installFiles } = await import('./install-files');
    await installFiles(files, installation, (step) => tell({ type: 'installing', step }));
  } catch (error) {
    tell({ type: 'installing', step: troubled(error) });
  }
}

function troubled(error: unknown): { state: 'trouble'; trouble: 'memory' | 'failed' } {
  console.error(error);
  // What is too long for a text or a list is told as a RangeError.
  return { state: 'trouble', trouble: error instanceof RangeError ? 'memory' : 'failed' };
}

addEventListener('message', ({ data }: MessageEvent<ToEngine>) => {
  switch (data.type) {
    case 'packsChanged':
      return void readPacks();
    case 'audit':
      if (speaking) {
        const { wanted } = data;
        void audited(data, speaking).then((answer) => tell({ type: 'answered', wanted, answer }));
      }
      return;
    case 'ask':
      return void reply(data.number, data.question).catch((error: unknown) => {
        console.error(error);
        tell({ type: 'reply', number: data.number, reply: { ok: false, trouble: 'failed' } });
      });
    case 'install':
      return void install(data);
    case 'look':
      return void look(data);
  }
});
