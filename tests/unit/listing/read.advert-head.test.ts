import { describe, expect, it } from 'vitest';
import { readListing } from '../../../src/listing/read';
import { documentOf } from './dom';

const WORDS =
  '<p>Cast iron, worked by a wheel at the side, with its cover and two spare needles.</p><p>The paint is rubbed through at the arm, all else is whole.</p>';
const PHOTOS = '<img src="/ph/1.jpg"><img src="/ph/2.jpg">';
const read = (title: string, body: string) => readListing(documentOf(`<title>${title}</title><body>${body}</body>`));

describe('the head of the part in which words, photographs and price stand together', () => {
  it('is the title under the name of a sale', () => {
    const { title } = read(
      'Lot 58 - Sale of 12 December 2026 - Drumwell Rooms',
      `<div><h1>Fine furniture and curiosities</h1><p>Saturday 12 December 2026, on view from nine.</p></div>
       <div>${PHOTOS}<p>58</p><div><p><b>Ribbon pleating machine by DERVANCHE</b></p>${WORDS}</div><p>Starting bid: £150</p></div>`,
    );
    expect(title).toBe('Ribbon pleating machine by DERVANCHE');
  });

  it('is the title under a word or two that the window says, where it is a heading', () => {
    const { title } = read(
      'Cat. 0771 | 44th sale Craft &amp; Workshop | Drumwell Rooms',
      `<div><h1>Craft &amp; Workshop</h1><p>14 November 2026, eleven o'clock, in the hall</p></div>
       <main><h2>Buttonhole engine for tailors</h2>${PHOTOS}${WORDS}<p class="price">€520</p></main>`,
    );
    expect(title).toBe('Buttonhole engine for tailors');
  });

  it('is no title where the heading over all is told again by the words', () => {
    const { title } = read(
      'Iron machine with cover | Thrift Shelf',
      `<h1>Iron machine with cover</h1><p>Seen by many people on this site today.</p>
       <div><h3>Bought from a convent school</h3>${PHOTOS}${WORDS}<p class="price">€520</p></div>`,
    );
    expect(title).toBe('Iron machine with cover');
  });

  it('is no title where the window says a heading of several words', () => {
    const { title } = read(
      'Buttonhole engine for tailors | Thrift Shelf',
      `<h1>Buttonhole engine for tailors</h1><p>Seen by many people on this site today.</p>
       <div><h3>Bought from a convent school</h3>${PHOTOS}${WORDS}<p class="price">€520</p></div>`,
    );
    expect(title).toBe('Buttonhole engine for tailors');
  });
});

describe('an advert of a board', () => {
  const RULES = 'Members only, no trade. Notices are taken down after eight weeks, and dues are £18.';

  it('may have its words over its name, and its price in a sentence under it', () => {
    const { title, description, price } = read(
      'Notices – Guild of Turners',
      `<ul><li><a href="/1">Home</a></li></ul><p>${RULES}</p><div>${WORDS}<h3>Ornamental lathe with tooling</h3>
       <p class="who">Offers around <b>£550</b> to the warden, in the hall.</p>${PHOTOS}</div>
       <h4>Diary</h4><table>${'<tr><td>No meeting</td><td>-</td></tr>'.repeat(6)}<tr><td>Talk</td><td>£4</td></tr></table>`,
    );
    expect(title).toBe('Ornamental lathe with tooling');
    expect(description).toMatch(/^Cast iron.*all else is whole\.$/s);
    expect(price).toMatchObject({ amount: '550', currency: 'GBP' });
  });

  it('is what stands in a part with its photograph, not what is said around it', () => {
    const links = Array.from({ length: 7 }, (_, index) => `<li><a href="/${index}">Part ${index}</a></li>`).join('');
    const { title, description } = read(
      'Ring of Knitters at the Brook',
      `<h1>Ring of Knitters at the Brook</h1><ul>${links}</ul><h2>Board</h2><p>${RULES}</p>
       <div class="note"><p><b>For sale: two machines for parts</b></p>${WORDS}${PHOTOS}</div>
       <h3>Funds</h3><p>The bazaar brought in £418.50, which is more than last year and paid for the lamp.</p>`,
    );
    expect(title).toBe('two machines for parts');
    expect(description).toMatch(/^Cast iron.*all else is whole\.$/s);
  });
});

describe('what is set before or behind a title', () => {
  const titled = (title: string) =>
    read(`${title} | Thrift Shelf`, `<h1>${title}</h1>${PHOTOS}${WORDS}<p class="price">€520</p>`).title;

  it.each([
    'For sale: buttonhole engine',
    'Te koop: buttonhole engine',
    'Biete – buttonhole engine',
    'Lot 119. buttonhole engine',
    'buttonhole engine (sold)',
    'buttonhole engine (onder voorbehoud verkocht)',
    'buttonhole engine – SOLD',
  ])('is left out: %s', (title) => {
    expect(titled(title)).toBe('buttonhole engine');
  });

  it.each(['Wanted: buttonhole engine', 'Lot of 12 buttonhole engines', 'Buttonhole engine (incomplete)'])(
    'stays where it says what the thing is, or that it is sought: %s',
    (title) => {
      expect(titled(title)).toBe(title);
    },
  );
});
