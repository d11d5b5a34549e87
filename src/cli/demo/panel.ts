import { writeFile } from 'node:fs/promises';
import { setTimeout as sleep } from 'node:timers/promises';
import { expressionOf } from './evaluable';
import type { RawTarget } from './raw-target';

/** The real side panel, as a driver's hands and eyes. Times are in milliseconds, sizes in CSS pixels. */
export interface Panel {
  /** Evaluates in the panel's page; a function is sent as its source, so it sees its arguments alone. */
  evaluate<T, A extends unknown[]>(what: string | ((...args: A) => T), ...args: A): Promise<Awaited<T>>;
  /** Waits until the expression is true in the page. @throws Error that tells the expression and the panel's text. */
  waitFor(expression: string, timeout?: number): Promise<void>;
  /** Waits until the selector matches. */
  waitForSelector(selector: string, timeout?: number): Promise<void>;
  /** The text as it is shown. */
  text(): Promise<string>;
  /** A real mouse click in the middle of the first match, scrolled into view. */
  click(selector: string): Promise<void>;
  /** A real key press: "Tab", "Enter", "Escape", " " or a character; modifiers as in CDP (8 is shift). */
  press(key: string, modifiers?: number): Promise<void>;
  setColourScheme(scheme: 'light' | 'dark'): Promise<void>;
  /** Lays the page out at this width; null goes back to the panel's own. */
  setWidth(width: number | null, height?: number): Promise<void>;
  /** A PNG of the whole page, down to its end. */
  screenshot(path: string): Promise<void>;
  closed(): boolean;
}

const KEYS: Record<string, { code: string; keyCode: number; text?: string }> = {
  Tab: { code: 'Tab', keyCode: 9 },
  Enter: { code: 'Enter', keyCode: 13, text: '\r' },
  Escape: { code: 'Escape', keyCode: 27 },
  ' ': { code: 'Space', keyCode: 32, text: ' ' },
  ArrowLeft: { code: 'ArrowLeft', keyCode: 37 },
  ArrowUp: { code: 'ArrowUp', keyCode: 38 },
  ArrowRight: { code: 'ArrowRight', keyCode: 39 },
  ArrowDown: { code: 'ArrowDown', keyCode: 40 },
  Home: { code: 'Home', keyCode: 36 },
  End: { code: 'End', keyCode: 35 },
};

export function panelOf(target: RawTarget): Panel {
  let size: { width: number; height: number } | null = null;

  const run = async (expression: string): Promise<unknown> => {
    const answer = (await target.send('Runtime.evaluate', {
      expression,
      awaitPromise: true,
      returnByValue: true,
      userGesture: true,
    })) as { result: { value?: unknown }; exceptionDetails?: { text: string; exception?: { description?: string } } };
    const problem = answer.exceptionDetails;
    if (problem) throw new Error(problem.exception?.description ?? problem.text);
    return answer.result.value;
  };
  const resize = () =>
    size
      ? target.send('Emulation.setDeviceMetricsOverride', { ...size, deviceScaleFactor: 1, mobile: false })
      : target.send('Emulation.clearDeviceMetricsOverride');

  const panel: Panel = {
    async evaluate(what, ...args) {
      return (await run(expressionOf(what as string, args))) as never;
    },
    async waitFor(expression, timeout = 15_000) {
      const end = Date.now() + timeout;
      for (;;) {
        if (await run(`Boolean(${expression})`).catch(() => false)) return;
        if (Date.now() > end || target.detached()) break;
        await sleep(50);
      }
      const shown = target.detached() ? 'the panel is closed' : await panel.text().catch(String);
      throw new Error(`not in ${timeout} ms: ${expression}\nthe panel shows:\n${shown}`);
    },
    waitForSelector: (selector, timeout) =>
      panel.waitFor(`document.querySelector(${JSON.stringify(selector)})`, timeout),
    text: async () => (await run('document.body?.innerText ?? ""')) as string,
    async click(selector) {
      const at = (await run(`(() => {
        const element = document.querySelector(${JSON.stringify(selector)});
        if (!element) throw new Error('nothing matches ' + ${JSON.stringify(selector)});
        element.scrollIntoView({ block: 'center', behavior: 'instant' });
        const box = element.getClientRects()[0] ?? element.getBoundingClientRect();
        return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
      })()`)) as { x: number; y: number };
      const mouse = { ...at, button: 'left', clickCount: 1 };
      await target.send('Input.dispatchMouseEvent', { type: 'mouseMoved', ...at });
      await target.send('Input.dispatchMouseEvent', { type: 'mousePressed', ...mouse });
      await target.send('Input.dispatchMouseEvent', { type: 'mouseReleased', ...mouse });
    },
    async press(key, modifiers = 0) {
      const known = KEYS[key] ?? { code: '', keyCode: key.toUpperCase().charCodeAt(0), text: key };
      const event = { key, code: known.code, windowsVirtualKeyCode: known.keyCode, modifiers };
      const text = known.text === undefined ? {} : { text: known.text };
      const type = known.text === undefined ? 'rawKeyDown' : 'keyDown';
      await target.send('Input.dispatchKeyEvent', { type, ...event, ...text });
      await target.send('Input.dispatchKeyEvent', { type: 'keyUp', ...event });
    },
    async setColourScheme(scheme) {
      const features = [{ name: 'prefers-color-scheme', value: scheme }];
      await target.send('Emulation.setEmulatedMedia', { features });
    },
    async setWidth(width, height = 720) {
      size = width === null ? null : { width, height };
      await resize();
    },
    async screenshot(path) {
      const whole = (await run(`(() => { const e = document.documentElement;
        return { width: innerWidth, height: Math.max(e.scrollHeight, innerHeight) }; })()`)) as {
        width: number;
        height: number;
      };
      // No picture is taller than 16,384 pixels, the largest texture that is drawn.
      const clip = { x: 0, y: 0, width: whole.width, height: Math.min(whole.height, 16_384), scale: 1 };
      const shot = await target.send('Page.captureScreenshot', { format: 'png', captureBeyondViewport: true, clip });
      await writeFile(path, Buffer.from(shot.data as string, 'base64'));
    },
    closed: () => target.detached(),
  };
  return panel;
}
