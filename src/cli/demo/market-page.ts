import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { cli as texts } from '../../text/catalogue/cli';
import { BadInput } from '../bad-input';

/** The environment variable that picks another page of the market; an argument does as well, and goes first. */
const PAGE_VARIABLE = 'BEDPLATE_PAGE';

/** Where a page's file stands in its folder, by name. */
export function fileOfPage(market: string, name: string): string {
  return join(market, name, 'page.html');
}

/** The names of the market's pages, in order. */
function pagesOf(market: string): string[] {
  if (!existsSync(market)) return [];
  return readdirSync(market)
    .filter((name) => existsSync(fileOfPage(market, name)))
    .sort();
}

/**
 * The page that the demo opens.
 * @throws BadInput that names all pages, where there is none of that name.
 */
export function choosePage(market: string, usual: string, argv: string[], env = process.env): string {
  const asked = argv[0] ?? env[PAGE_VARIABLE] ?? usual;
  const pages = pagesOf(market);
  if (!pages.includes(asked)) throw new BadInput(texts.demo.noPage(asked, pages.join(', ')));
  return asked;
}
