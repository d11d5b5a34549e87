import { JSDOM } from 'jsdom';

export const ADDRESS = 'https://market.example/ad/417';

/** A document as the command line sees it: no layout, no scripts run. */
export function documentOf(html: string, url: string = ADDRESS): Document {
  return new JSDOM(html, { url }).window.document;
}
