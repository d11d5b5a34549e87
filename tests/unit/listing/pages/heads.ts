import { type Page, price } from './page';

const page = (metas: string) =>
  `<title>Hand crank with key, made in 1931 – Fettle</title>${metas}<h1>Hand crank with key, made in 1931</h1><p>£45</p><img src="/crank.jpg" width="300" height="200"><h2>Description</h2><p>It still turns freely.</p>`;
const picture = (name: string) => `https://market.example/${name}.jpg`;

/** What the head says of a page whose content has changed without loading another. */
export const headPages: Page[] = [
  {
    name: 'a head that speaks of another advert than window and heading do',
    html: page(
      '<meta property="og:title" content="Treadle in aluminium, straight stitch, 1955"><meta property="og:image" content="/treadle.jpg"><meta property="og:description" content="A treadle."><meta property="product:price:amount" content="180"><meta property="product:price:currency" content="GBP">',
    ),
    expected: {
      title: 'Hand crank with key, made in 1931',
      price: price('45', 'GBP'),
      photos: [picture('crank')],
      offers: 1,
    },
    absent: ['180', 'treadle', 'Treadle'],
  },
  {
    name: 'a head that says the same in other words',
    html: page(
      '<meta property="og:title" content="1931 hand crank (with key)"><meta property="og:image" content="/crank-large.jpg">',
    ),
    expected: { photos: [picture('crank-large')] },
  },
];
