import { readdirSync, readFileSync } from 'node:fs';
import { JSDOM } from 'jsdom';

const TUNED = 'fixtures/pages/tuned';
/** The address of a page that gives none. */
const ADDRESS = 'https://market.example/ad/417';

export interface TunedPage {
  name: string;
  html: string;
  url: string;
}

/** The pages that the reader is worked on with. */
export function tunedPages(): TunedPage[] {
  const folders = readdirSync(TUNED, { withFileTypes: true }).filter((entry) => entry.isDirectory());
  return folders.map(({ name }) => {
    const { url } = JSON.parse(readFileSync(`${TUNED}/${name}/expected.json`, 'utf8')) as { url?: string };
    return { name, html: readFileSync(`${TUNED}/${name}/page.html`, 'utf8'), url: url ?? ADDRESS };
  });
}

export const documentOf = ({ html, url }: TunedPage): Document => new JSDOM(html, { url }).window.document;
