import { JSDOM, VirtualConsole } from 'jsdom';
import { type Measured, measure } from './in-page';
import type { StoredPage } from './stored-pages';

const ROUNDS = 3;

/** Reads a page in jsdom, without layout and without running its scripts. */
export async function measureInNode({ html, address }: StoredPage): Promise<Measured> {
  const { window } = new JSDOM(html, { url: address, virtualConsole: new VirtualConsole() });
  const measured = await measure(window.document, address, ROUNDS);
  window.close();
  return measured;
}
