import { MANNERS, type Manner, many, STYLE, sentence } from './disorder';
import type { StoredPage } from './stored-pages';

// Stored pages of one advert, each in its own mark-up, grown to the size of real ones by what surrounds an advert there.
// What is expected stays as it was: nothing that is set around them speaks of their thing.

/** Sizes are spread evenly on a logarithmic scale between these, in nodes; the middle one is about 4,100. */
const LEAST = 1200;
const MOST = 14_000;
/** Steps of the golden section fill any range evenly, however many there are. */
const GOLDEN = 0.618_034;

/** What a site's scripts know of all that the page shows: one that is assigned, and one that does things. */
const scripts = (nodes: number, { state }: Manner): string => {
  const others = Array.from({ length: Math.round(nodes / 60) }, (_, at) => ({
    id: at,
    label: sentence(at, 6),
    cost: 20 + (at % 300),
    tags: { place: at % 40, seen: at % 2 === 0 },
  }));
  const flags = Object.fromEntries(Array.from({ length: 400 }, (_, at) => [`flag-${at}`, { on: at % 3 === 0 }]));
  return `${state ? `<script>window.__PAGE__ = ${JSON.stringify({ flags, others })};</script>\n` : ''}
    <script>(function (later) {${'later.push(function (a, b) { return a ? b : "shown"; });'.repeat(300)}})(window.later = []);</script>`;
};

/**
 * The page with menus and a question for consent before, and other adverts, comments, a footer and scripts after what it
 * holds. All that is set around is ASCII, so that a page keeps its own encoding. Null where a page has no body to grow.
 */
function grown({ name, html, address, expected }: StoredPage, nodes: number, manner: Manner): StoredPage | null {
  // One character for each byte, so that no byte of the page changes.
  const page = html.toString('latin1');
  const begin = /<body\b[^>]*>/i.exec(page);
  if (!begin) return null;
  const from = begin.index + begin[0].length;
  const end = page.search(/<\/body\s*>/i);
  const to = end < from ? page.length : end;
  const { named } = manner;
  const before = `<style>${STYLE}</style>
    <div class="${named('consent')} consent" role="alertdialog" aria-label="Cookies"><h2>We value your privacy</h2><div>${many('consent', nodes, manner)}</div></div>
    <nav class="${named('top')}"><ul>${many('menu', nodes, manner)}</ul></nav>`;
  const after = `
    <section class="${named('similar')}"><h2>Similar adverts</h2><div class="${named('grid')}">${many('related', nodes, manner)}</div></section>
    <section class="${named('comments')}"><h2>Comments</h2>${many('comment', nodes, manner)}</section>
    <footer class="${named('foot')}"><ul>${many('footer', nodes, manner)}</ul></footer>
    ${scripts(nodes, manner)}`;
  const around = (text: string) => text.replaceAll('£', '&pound;');
  const whole = page.slice(0, from) + around(before) + page.slice(from, to) + around(after) + page.slice(to);
  return { name: `${name}, grown`, html: Buffer.from(whole, 'latin1'), address, expected };
}

/** All pages of one advert among the given ones, each of a size and in a manner of its own; the same each time. */
export function grownPages(pages: readonly StoredPage[]): StoredPage[] {
  const single = pages.filter(({ expected }) => expected && (expected.offers ?? 1) === 1);
  return single.flatMap((page, index) => {
    const nodes = Math.round(LEAST * (MOST / LEAST) ** ((index * GOLDEN) % 1));
    return grown(page, nodes, MANNERS[index % MANNERS.length]!) ?? [];
  });
}
