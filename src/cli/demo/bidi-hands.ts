import { setTimeout as sleep } from 'node:timers/promises';
import { type Connection, evaluateIn } from './bidi';

/** A key's value in WebDriver, where it is no character of its own. */
const KEYS: Record<string, string> = {
  Tab: '\uE004',
  Enter: '\uE007',
  Escape: '\uE00C',
  ArrowLeft: '\uE012',
  ArrowUp: '\uE013',
  ArrowRight: '\uE014',
  ArrowDown: '\uE015',
  Home: '\uE011',
  End: '\uE010',
  Delete: '\uE017',
  Backspace: '\uE003',
};
const SHIFT = '\uE008';

/** As often as a press is tried that did not reach what it was meant for. */
const TRIES = 3;

/** How long a press waits for what it is meant for, in milliseconds: a page may still be drawing it. */
const PATIENCE = 15_000;

/**
 * A real mouse click in the middle of the selector's first match, scrolled into view, once it is there and stands still.
 * What is drawn in that very moment can push it from under the mouse: then it is pressed once more.
 * @throws Error where nothing matches in `patience` milliseconds
 */
export async function clickIn(
  connection: Connection,
  context: string,
  selector: string,
  patience = PATIENCE,
): Promise<void> {
  const there = async () => (await evaluateIn(connection, context, isThere, [selector])) === true;
  if (!(await keepAsking(there, patience))) throw new Error(`nothing matches ${selector}`);
  for (let tries = 0; tries < TRIES; tries += 1) {
    const at = (await evaluateIn(connection, context, standingStill, [selector])) as { x: number; y: number } | null;
    // Gone: the press before has done its work after all, or a page that was being left had it.
    if (!at && tries > 0) return;
    if (!at) throw new Error(`gone before it was pressed: ${selector}`);
    const actions = [
      { type: 'pointerMove', ...at },
      { type: 'pointerDown', button: 0 },
      { type: 'pointerUp', button: 0 },
    ];
    await connection.send('input.performActions', { context, actions: [{ type: 'pointer', id: 'mouse', actions }] });
    // A page that went away, or was closed by the press, has nothing to say.
    const missed = await evaluateIn(connection, context, wasMissed, []).catch(() => false);
    if (missed !== true) return;
  }
}

/** In the page: something matches. */
function isThere(wanted: string): boolean {
  return document.querySelector(wanted) !== null;
}

/** In the page: where the element stands; from now on the page knows whether a press reaches it. */
async function standingStill(wanted: string): Promise<{ x: number; y: number } | null> {
  const measure = () => {
    const element = document.querySelector(wanted);
    if (!element) return null;
    element.scrollIntoView({ block: 'center', behavior: 'instant' });
    const box = element.getClientRects()[0] ?? element.getBoundingClientRect();
    return { element, x: Math.floor(box.x + box.width / 2), y: Math.floor(box.y + box.height / 2) };
  };
  let at = measure();
  for (let looks = 0; at && looks < 50; looks += 1) {
    await new Promise((resolve) => setTimeout(resolve, 30));
    const now = measure();
    if (now && now.element === at.element && now.x === at.x && now.y === at.y) break;
    at = now;
  }
  if (!at) return null;
  const page = window as unknown as { pressMissed?: boolean };
  page.pressMissed = true;
  at.element.addEventListener('click', () => (page.pressMissed = false), { once: true, capture: true });
  return { x: at.x, y: at.y };
}

/** In the page: nothing of the last press came to what it was meant for. */
function wasMissed(): boolean {
  return (window as unknown as { pressMissed?: boolean }).pressMissed === true;
}

/** A real key press; see Panel.press. */
export async function pressIn(connection: Connection, context: string, key: string, modifiers = 0): Promise<void> {
  const value = KEYS[key] ?? key;
  const stroke = [
    { type: 'keyDown', value },
    { type: 'keyUp', value },
  ];
  const shifted = modifiers & 8;
  const actions = shifted ? [{ type: 'keyDown', value: SHIFT }, ...stroke, { type: 'keyUp', value: SHIFT }] : stroke;
  await connection.send('input.performActions', { context, actions: [{ type: 'key', id: 'keys', actions }] });
}

/** A real key press for each character. */
export async function typeIn(connection: Connection, context: string, text: string): Promise<void> {
  const actions = [...text].flatMap((character) => {
    const value = character === '\n' ? KEYS.Enter : character;
    return [
      { type: 'keyDown', value },
      { type: 'keyUp', value },
    ];
  });
  await connection.send('input.performActions', { context, actions: [{ type: 'key', id: 'keys', actions }] });
}

/** Asks until the answer is true, or the time is over. @returns whether it ever was */
export async function keepAsking(ask: () => Promise<boolean>, timeout: number): Promise<boolean> {
  const end = Date.now() + timeout;
  for (;;) {
    if (await ask().catch(() => false)) return true;
    if (Date.now() > end) return false;
    await sleep(50);
  }
}
