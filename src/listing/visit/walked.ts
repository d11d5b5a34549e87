import type { Box } from '../types';
import type { Stretch } from './lining';

/** A page in document order, from one walk over its nodes. Attributes are read, layout is not. */
export interface Walk {
  lines: Stretch[];
  boxes: Box[];
  images: { element: Element; box: number; line: number; link: string | null }[];
  times: { element: Element; line: number }[];
  /** Elements that say something to machines: meta, title, link and base. */
  heads: Element[];
  /** Script elements of type application/ld+json. */
  linkedData: Element[];
  /** Elements that begin a microdata item, and the first element of each id. */
  scopes: Element[];
  ids: Map<string, Element>;
  /** Index of the first line of the first h1, or 0. */
  title: number;
  /** Script elements that may hold the page's state: those without an address. */
  scripts: Element[];
  /** Addresses of frames that show something of another origin. */
  unread: string[];
  /** How many nodes were read. */
  nodes: number;
  /** The page had more nodes than are read. */
  cut: boolean;
}

/** Before the first node was read. `lines` are filled by whoever puts texts together. */
export const nothingWalked = (lines: Stretch[]): Walk => ({
  lines,
  boxes: [],
  images: [],
  times: [],
  heads: [],
  linkedData: [],
  scopes: [],
  ids: new Map(),
  title: -1,
  scripts: [],
  unread: [],
  nodes: 0,
  cut: false,
});
