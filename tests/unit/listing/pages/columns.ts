import { type Page, price } from './page';

const WORDS = 'It has been in my family for as long as I can remember, and it still turns freely.';
const ADVERT = `<font size="4"><b>HAND CRANK WITH KEY</b></font><br>ADVERT 12 - LISTED 20/11/2026<table border="1"><tr><td>PRICE</td><td><b>£45</b></td></tr><tr><td>COND.</td><td>USED</td></tr><tr><td>WHERE</td><td>WETHERLAW</td></tr><tr><td colspan="2">${WORDS}</td></tr></table><p><a href="/w">Write to the seller</a> - <a href="/r">Rules</a></p>`;
const HEAD = '<title>HAND CRANK WITH KEY - FETTLE</title>';
const columns = (advert: string, beside: string) =>
  `${HEAD}<table width="780"><tr><td colspan="2"><b>FETTLE</b> - FREE ADS<br><a href="/">HOUSE</a> | <a href="/">SEWING</a></td></tr><tr><td width="560">${advert}</td><td width="200">${beside}</td></tr></table>`;
const expected = {
  title: 'HAND CRANK WITH KEY',
  description: WORDS,
  price: price('45', 'GBP'),
  condition: 'USED',
  place: 'WETHERLAW',
  listedDate: '2026-11-20',
  details: '',
  offers: 1,
};

/** Adverts and lists in columns of one kind, without a heading that says which is which. */
export const columnPages: Page[] = [
  {
    name: 'beside an advert a column of three others, by links and line breaks',
    html: columns(
      ADVERT,
      '<b>MORE ADVERTS</b><br><a href="/1">Treadle of 1931, stand and all</a> £65<br><a href="/2">Electric of 1955, with its case</a> £80<br><a href="/3">Box of feet and bobbins</a> £9<br>',
    ),
    expected,
    absent: ['65', '80', 'Treadle'],
  },
  {
    name: 'beside an advert a column of two others, in boxes',
    html: columns(
      ADVERT,
      '<div><a href="/1">Treadle of 1931, stand and all</a><br>£65</div><div><a href="/2">Electric of 1955</a><br>£80</div>',
    ),
    expected,
    absent: ['65', '80', 'Treadle'],
  },
  {
    name: 'beside an advert one other',
    html: columns(ADVERT, '<a href="/1">Treadle of 1931, stand and all</a> £65<br>'),
    expected,
    absent: ['65', 'Treadle'],
  },
  {
    name: 'beside an advert others with their pictures, under a label in bold',
    html: columns(
      `<img src="/crank.jpg" width="300" height="200"><br>${ADVERT}`,
      '<b>SIMILAR ADVERTS</b><br><img src="/treadle.jpg" width="200" height="150"><br><a href="/1">Treadle of 1931, stand and all</a> £65<br><img src="/box.jpg" width="200" height="150"><br><a href="/2">Box of feet and bobbins</a> £9<br><br><b>OPEN:</b> Saturdays',
    ),
    expected: { ...expected, photos: ['https://market.example/crank.jpg'] },
    absent: ['65', 'Treadle', 'treadle'],
  },
  {
    name: 'words of the seller under a label in bold that elsewhere begins what is not the advert',
    html: `${HEAD}<p><b>Hand crank with key</b></p><p>£45</p><div class="description">${WORDS}<br><b>Terms:</b><br>Cash, and bring a friend who lifts.</div>`,
    expected: { description: `${WORDS}\nTerms:\nCash, and bring a friend who lifts.` },
  },
  {
    name: 'a list in two columns, two in each',
    html: columns(
      '<p><a href="/1">Treadle of 1931, stand and all</a> £65</p><p><a href="/2">Electric of 1955</a> £80</p>',
      '<p><a href="/3">Box of feet and bobbins</a> £9</p><p><a href="/4">Portable in its case</a> £30</p>',
    ),
    expected: { offers: 4, description: '', price: null },
  },
  {
    name: 'a list in rows of two, searched for what one of them is called',
    html: `${HEAD}<table><tr><td><a href="/1">HAND CRANK WITH KEY</a><br>£65</td><td><a href="/2">Electric of 1955</a><br>£80</td></tr><tr><td><a href="/3">Box of feet and bobbins</a><br>£9</td><td><a href="/4">Portable in its case</a><br>£30</td></tr></table>`,
    expected: { offers: 4, description: '', price: null },
  },
  {
    name: 'a window title with the site’s name before the title, that only the page tells apart',
    html: `<title>Fettle: the finder – Hand crank with key</title><p><b>Hand crank with key</b></p><p>£45</p><p>${WORDS}</p>`,
    expected: { title: 'Hand crank with key' },
  },
  {
    name: 'a window title of two parts that both are the title',
    html: `<title>Hand crank - with key</title><p><a href="/s">Hand crank</a> › 1931</p><p><b>Hand crank - with key</b></p><p>£45</p><p>${WORDS}</p>`,
    expected: { title: 'Hand crank - with key' },
  },
];
