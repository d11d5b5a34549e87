import { pathToFileURL } from 'node:url';
import { JSDOM, VirtualConsole } from 'jsdom';
import { readListing } from '../engine';
import type { Listing } from '../listing/types';
import { cli as texts } from '../text/catalogue/cli';
import { BadInput } from './bad-input';
import { readBytes } from './input-file';

/**
 * Reads a stored page. No script of it runs and nothing that it names is loaded; its bytes are decoded as a browser
 * would (byte-order mark, then meta charset, else windows-1252: HTML Standard, encoding sniffing).
 * @param url the address it came from; without one its file's own.
 * @param asOf the day on which the page was seen (ISO 8601), which "3 days ago" is counted from; null where not known.
 * @throws BadInput where the file can't be read.
 */
export function readPageFile(path: string, url: string | undefined, asOf: string | null = null): Listing {
  const bytes = readBytes(path);
  const address = url ?? pathToFileURL(path).href;
  let dom: JSDOM;
  try {
    // A console of its own that is connected to nothing: a page's broken style sheet is none of our output.
    dom = new JSDOM(bytes, { url: address, contentType: 'text/html', virtualConsole: new VirtualConsole() });
  } catch (error) {
    throw new BadInput(texts.bad.page(path, error instanceof Error ? error.message : String(error)));
  }
  const listing = readListing(dom.window.document, address, asOf);
  dom.window.close();
  return listing;
}
