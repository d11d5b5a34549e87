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
