import { MANNERS, type Manner, many, STYLE, sentence } from './disorder';
import type { ExpectedListing, StoredPage } from './stored-pages';

// Pages as large as those of real markets, made in memory: the invented ones in fixtures are small, so that what is paid
// once for every page decides how long they take.

const TITLE = 'Treadle machine in an oak cabinet, with its drawers';
const PRICE = '145.00';
const DESCRIPTION = [
  'It belonged to my grandmother, who sewed curtains on it until she was eighty.',
  'The belt was changed two years ago and it turns freely, but nobody here can say whether it still sews.',
  'One drawer sticks. The veneer has lifted at a corner, as the third photograph shows.',
  'A box of shuttles and a booklet come with it. It has to be collected, by two people.',
];
function advert({ named }: Manner): string {
  const rows = [
    ['Condition', 'Used'],
    ['Location', 'Netherholme'],
    ['Listed', '14 May 2026'],
    ['Material', 'Cast iron and oak'],
    ['Collection', 'Only'],
  ];
  return `
    <main class="${named('main')}"><div class="${named('columns')}">
      <div class="${named('gallery')}">${Array.from({ length: 8 }, (_, at) => `<button type="button" class="${named('thumb')}"><img src="/photos/large-${at}.jpg" alt="Photograph ${at + 1}" width="640" height="480"></button>`).join('')}</div>
      <div class="${named('facts')}"><h1 class="${named('title')}">${TITLE}</h1>
        <div class="${named('price-row')}"><p class="${named('price')}"><span>£145</span></p> <s class="old">£180</s></div>
        <dl class="${named('rows')}">${rows.map(([label, value]) => `<div><dt>${label}</dt><dd>${value}</dd></div>`).join('')}</dl>
        <h2>Description</h2><div class="${named('words')}">${DESCRIPTION.map((text) => `<p>${text}</p>`).join('')}</div>
        <div class="${named('contact')}"><button type="button">Contact the seller</button></div></div>
    </div></main>`;
}

const linkedData = (): string =>
  JSON.stringify({
    '@context': 'https://schema.org',
    '@type': 'Product',
    name: TITLE,
    description: DESCRIPTION.join('\n'),
    offers: { '@type': 'Offer', price: PRICE, priceCurrency: 'GBP', itemCondition: 'https://schema.org/UsedCondition' },
  });

/** The data of a page's own scripts: the advert among all that the page shows, and what nobody needs. */
const stateOfPage = (others: number): string =>
  JSON.stringify({
    config: Object.fromEntries(Array.from({ length: 300 }, (_, at) => [`flag-${at}`, { on: at % 2 === 0, group: at }])),
    page: { ad: { id: 77120, title: TITLE, description: DESCRIPTION.join('\n'), price: { amount: 145 } } },
    related: Array.from({ length: others }, (_, at) => ({ id: at, label: sentence(at, 5), cost: 20 + (at % 300) })),
  });

/**
 * A page of about so many nodes (elements, texts and comments) with one advert among its disorder.
 * @param nodes at least 2,000.
 */
export function largePage(nodes: number, manner: Manner): StoredPage {
  const left = nodes - 400;
  const { named } = manner;
  const html = `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><title>${TITLE} | Adverts</title>
  <meta name="description" content="${DESCRIPTION[0]}"><meta property="og:title" content="${TITLE}">
  <link rel="canonical" href="https://market.example/ad/77120">
  <style>${STYLE}</style>${manner.linkedData ? `\n  <script type="application/ld+json">${linkedData()}</script>` : ''}
</head><body class="page">
    <div class="${named('consent')} consent" role="alertdialog" aria-label="Cookies"><h2>We value your privacy</h2><div>${many('consent', left, manner)}</div></div>
    <header class="${named('top')}"><nav><ul>${many('menu', left, manner)}</ul></nav></header>${advert(manner)}
    <section class="${named('similar')}"><h2>Similar adverts</h2><div class="${named('grid')}">${many('related', left, manner)}</div></section>
    <section class="${named('comments')}"><h2>Comments</h2>${many('comment', left, manner)}</section>
    <footer class="${named('foot')}"><ul>${many('footer', left, manner)}</ul></footer>
${manner.state ? `    <script id="state" type="application/json">${stateOfPage(Math.round(nodes / 100))}</script>\n` : ''}    <script>window.later = window.later || [];${'later.push(function () { return 1; });'.repeat(400)}</script>
</body></html>`;
  const expected: ExpectedListing = {
    title: TITLE,
    price: { amount: PRICE, currency: 'GBP', how: 'asking' },
    description: DESCRIPTION.join('\n'),
    condition: 'Used',
    place: 'Netherholme',
    listedDate: '2026-05-14',
    offers: 1,
  };
  const name = `${nodes} nodes, ${manner.name}`;
  return { name, html: Buffer.from(html), address: 'https://market.example/ad/77120', expected };
}

/** One page of each manner. */
export const largePages = (nodes: number): StoredPage[] => MANNERS.map((manner) => largePage(nodes, manner));
