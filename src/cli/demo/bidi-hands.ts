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

/** A real mouse click in the middle of the selector's first match, scrolled into view, once it stands still there. */
export async function clickIn(connection: Connection, context: string, selector: string): Promise<void> {
  const at = (await evaluateIn(
    connection,
    context,
    async (wanted: string) => {
      const measure = () => {
        const element = document.querySelector(wanted);
        if (!element) throw new Error(`nothing matches ${wanted}`);
        element.scrollIntoView({ block: 'center', behavior: 'instant' });
        const box = element.getClientRects()[0] ?? element.getBoundingClientRect();
        return { x: Math.floor(box.x + box.width / 2), y: Math.floor(box.y + box.height / 2) };
      };
      let at = measure();
      for (let looks = 0; looks < 50; looks += 1) {
        await new Promise((resolve) => setTimeout(resolve, 30));
        const now = measure();
        if (now.x === at.x && now.y === at.y) break;
        at = now;
      }
      return at;
    },
    [selector],
  )) as { x: number; y: number };
  const actions = [
    { type: 'pointerMove', ...at },
    { type: 'pointerDown', button: 0 },
    { type: 'pointerUp', button: 0 },
  ];
  await connection.send('input.performActions', { context, actions: [{ type: 'pointer', id: 'mouse', actions }] });
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
