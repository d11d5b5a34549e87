import { answerTo } from '../../src/session/answer';
import type { FromEngine, ToEngine } from '../../src/session/engine-messages';
import { knowledgeOf } from '../../src/session/packs';
import { loadShelf } from '../shared/shelf';

// The engine in a thread of its own: however large the packs are, the panel answers to a finger. It reads the packs
// itself, so that neither they nor the code that checks them stand in the panel.
const tell = (message: FromEngine) => postMessage(message);

/** The packs as they were last read, and which reading of them that was. */
let stamp = 0;
let knowledge: ReturnType<typeof knowledgeOf> | null = null;

async function readPacks(): Promise<void> {
  stamp += 1;
  const mine = stamp;
  const shelf = await loadShelf();
  // A later change was announced in the meantime: its own reading tells.
  if (mine !== stamp) return;
  if (!shelf.ok) return tell({ type: 'packsFailed', trouble: shelf.trouble });
  knowledge = knowledgeOf(shelf.value);
  tell({ type: 'packsReady', stamp });
}

addEventListener('message', ({ data }: MessageEvent<ToEngine>) => {
  if (data.type === 'packsChanged') void readPacks();
  else if (knowledge)
    tell({ type: 'answered', wanted: data.wanted, answer: answerTo(data.harvest, data.asOf, knowledge) });
});
void readPacks();
