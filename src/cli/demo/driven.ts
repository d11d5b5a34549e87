import type { Panel } from './panel';
import type { SeenRequest } from './watch-network';
import type { SeenError } from './watch-targets';

/** What a driver can do in a tab, in every browser: the part of Playwright's `Page` that tests of both use. */
export interface Tab {
  goto(url: string): Promise<unknown>;
  reload(): Promise<unknown>;
  goBack(): Promise<unknown>;
  url(): string;
  /** Evaluates in the page; a function is sent as its source, so it sees its argument alone. */
  evaluate<T, A = undefined>(what: string | ((arg: A) => T), arg?: A): Promise<Awaited<T>>;
  content(): Promise<string>;
  /** A real mouse click on the first match; where it is waited for, so many milliseconds at most. */
  click(selector: string, options?: { timeout: number }): Promise<void>;
  /** Real presses, wherever the focus is: "Tab", "Enter" and the like, or a character; and all characters of a text. */
  keyboard: { press(key: string): Promise<void>; type(text: string): Promise<void> };
  setInputFiles(selector: string, paths: string | string[]): Promise<void>;
  /** Waits until the selector matches something in the page, seen or not. */
  waitForSelector(selector: string, options: { state: 'attached' }): Promise<unknown>;
  emulateMedia(what: { colorScheme: 'light' | 'dark' }): Promise<void>;
  /** In CSS pixels, the page alone. */
  setViewportSize(size: { width: number; height: number }): Promise<void>;
  /** A PNG of the whole page, down to its end. */
  screenshot(where: { path: string; fullPage: true }): Promise<unknown>;
  bringToFront(): Promise<void>;
  close(): Promise<void>;
}

/** A real browser with the extension, as far as every browser can be driven alike. */
export interface Driven {
  name: 'chromium' | 'firefox';
  /** The address of one of the extension's own pages. */
  addressOf(page: string): string;
  /** A new tab at that address, in front. */
  openTab(url: string): Promise<Tab>;
  /** A new window with one tab at that address. */
  openWindow(url: string): Promise<Tab>;
  /** A tab at that address which something else opened and nobody has asked for yet. Waits for one. @throws Error where none opens */
  tabAt(url: string): Promise<Tab>;
  /** What was last copied, as text. */
  copied(): Promise<string>;
  /** A new private window with one tab at that address, the extension allowed there as its user would allow it. */
  openPrivately(url: string): Promise<Tab>;
  /** The press of the toolbar button on that tab, with all that a real press grants. */
  pressToolbarButton(tab: Tab): Promise<void>;
  /** The press of the extension's item in the browser's menu over the words that are marked in that tab. */
  pressSelectionMenu(tab: Tab): Promise<void>;
  /**
   * The panel that is open: the one of the window of the last press, if several are. Waits for one to open.
   * @throws Error where none opens in `timeout` milliseconds.
   */
  openPanel(timeout?: number): Promise<Panel>;
  /** What the mark on the toolbar button is for the tab in front: "" or "•". */
  markInFront(): Promise<string>;
  /** Errors on consoles, uncaught exceptions and violations of content security policies, so far. */
  seenErrors(): Promise<readonly SeenError[]>;
  /** What left the browser so far; empty unless it is watched. */
  requests(): SeenRequest[];
  /** Stops the extension's background, as the browser does with an idle one. */
  stopWorker(): Promise<void>;
  close(): Promise<void>;
}
