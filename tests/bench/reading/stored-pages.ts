import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { basename, join } from 'node:path';
import type { Listing } from '../../../src/listing/types';

/** What a person reads on a page. A field that is not given is not judged; null says that the page doesn't tell it. */
export type ExpectedListing = Partial<Omit<Listing, 'fields' | 'url' | 'priceText'>> & { photosCount?: number };

export interface StoredPage {
  name: string;
  /** Bytes, so that whoever parses it decodes it as a browser would. */
  html: Buffer;
  address: string;
  expected: ExpectedListing | null;
}

/**
 * The pages of a folder: each a folder of its own with `page.html` (or `settled.html`, where a script would fill it) and
 * `expected.json`, or `NAME.html` beside `NAME.json`. What is expected may be missing.
 * @throws where the folder can't be read or an expected file is no JSON.
 */
export function pagesIn(folder: string): StoredPage[] {
  const found: StoredPage[] = [];
  for (const name of readdirSync(folder).sort()) {
    const path = join(folder, name);
    const inside = (file: string) => join(path, file);
    if (statSync(path).isDirectory()) {
      const page = ['settled.html', 'page.html'].map(inside).find((file) => existsSync(file));
      if (page) found.push(pageOf(name, page, inside('expected.json')));
    } else if (/\.html?$/i.test(name)) {
      found.push(pageOf(basename(name), path, path.replace(/\.html?$/i, '.json')));
    }
  }
  return found;
}

function pageOf(name: string, page: string, expected: string): StoredPage {
  const told = existsSync(expected) ? (JSON.parse(readFileSync(expected, 'utf8')) as Record<string, unknown>) : null;
  const { listing = null, url = null } = (told ?? {}) as { listing?: ExpectedListing; url?: string };
  return {
    name,
    html: readFileSync(page),
    address: url ?? `https://market.example/${encodeURIComponent(name)}/`,
    // Folders of the market say more than the listing; others may say the listing alone.
    expected: told && (listing ?? (told as ExpectedListing)),
  };
}
