import { describe, expect, it } from 'vitest';
import { readListing } from '../../../src/listing/read';
import { asShown } from '../../../src/listing/sources/window-title';
import { LINK } from '../../../src/listing/types';
import { documentOf } from './dom';

const WORDS = 'It has been in my family for as long as I can remember, and it still turns freely.';
const titleOf = (head: string, body: string) =>
  readListing(
    documentOf(
      `<html lang="en"><head>${head}</head><body>${body}<p class="price">£45.00</p><p>${WORDS}</p></body></html>`,
    ),
  ).title;

describe('a heading with a price in it', () => {
  it('is a title by what follows the price, where the window begins with that', () => {
    const head = '<title>Hand crank in its case, Netherholme</title>';
    expect(titleOf(head, '<h1><a href="/in">Log in first</a> £45 · Hand crank in its case</h1>')).toBe(
      'Hand crank in its case',
    );
  });

  it('and the window may have been escaped twice', () => {
    const head = '<title>Aunt&amp;#39;s crank in its case, Netherholme</title>';
    expect(titleOf(head, "<h1><a href='/in'>Log in first</a> £45 · Aunt's crank in its case</h1>")).toBe(
      "Aunt's crank in its case",
    );
  });
});

describe('a line that says most of what the window says', () => {
  it('is the title, where the headings are of parts of the page', () => {
    const head = '<title>Hand crank of 1904 No reserve</title>';
    const body = '<div class="text-lg">Hand crank of 1904</div><h1>Auctioneer</h1><h1>Bids office</h1>';
    expect(titleOf(head, body)).toBe('Hand crank of 1904');
  });
});

describe('a name without its maker’s', () => {
  const told =
    '<script type="application/ld+json">{"@type":"Product","name":"Haddercombe","brand":{"@type":"Brand","name":"Brindfold Works"}}</script>';

  it('gives way to the whole, where the page and its head say both', () => {
    const head = `<title>Buy it here</title><meta property="og:title" content="Brindfold Works - Haddercombe">${told}`;
    expect(titleOf(head, '<h1>Brindfold Works Haddercombe</h1><h2>Haddercombe</h2>')).toBe(
      'Brindfold Works Haddercombe',
    );
  });

  it('stays where the head alone says more', () => {
    const head = `<title>Haddercombe</title><meta property="og:title" content="Brindfold Works - Haddercombe">${told}`;
    expect(titleOf(head, '<h1>Haddercombe</h1>')).toBe('Haddercombe');
  });
});

describe('a heading of several elements', () => {
  it('is a title by the one that the head says, without its number behind', () => {
    const head = `<title>Hand crank HC 12 cheaply here</title><meta property="og:title" content="Hand crank HC 12">`;
    expect(titleOf(head, '<h1>Hand crank HC 12 <span class="code">Code: 20417</span></h1>')).toBe('Hand crank HC 12');
  });

  it('may be called the name in its first element alone', () => {
    const head = '<title>Brindfold and Daughters: details</title>';
    const body =
      '<div class="upper"><b class="name">Oak case for a hand crank with a lock</b> <b class="cheaper">Less for ten!</b></div>';
    expect(titleOf(head, body)).toBe('Oak case for a hand crank with a lock');
  });
});

describe('a title among the parts of the window', () => {
  it('is what the window begins with, not what it says in brackets', () => {
    const head = '<title>Long Spindle (Works of the Valley: Wool and Flax)</title>';
    const body =
      '<table><tr><td><h2>Long Spindle</h2><h3><a href="/s">Works of the Valley: Wool and Flax</a></h3></td></tr></table>';
    expect(titleOf(head, body)).toBe('Long Spindle');
  });

  it('is the whole of a line below a long menu, though another says its beginning and a number follows in the window', () => {
    const boxes = [{ tag: 'html', hint: '', parent: -1, from: 0, to: 212 }];
    const menu = Array.from({ length: 210 }, (_, at) => ({
      text: `Part ${at}`,
      box: 0,
      runs: [{ at: 0, flags: LINK }],
    }));
    const lines = ['Hand crank with a key - Oak: Dark brown', 'Hand crank with a key'].map((text) => ({
      text,
      box: 0,
    }));
    const title = 'Hand crank with a key - Oak: Dark brown 118204 | Brindfold';
    expect(asShown(title, { boxes, lines: [...menu, ...lines] })).toBe('Hand crank with a key - Oak: Dark brown');
  });

  it('is a line below a long menu that says all of them in another order', () => {
    const menu = Array.from({ length: 90 }, (_, at) => `<tr><td><a href="/${at}">Part ${at}</a></td></tr>`).join('');
    const head = '<title>Haddercombe | Brindfold | Hand crank in a case 31.5 | Cranks and More</title>';
    const body = `<table>${menu}</table><table><tr><td class="top-line">Haddercombe by Brindfold, hand crank in a case 31.5</td></tr><tr><td>Number: 12</td></tr><tr><td>Made by: Brindfold</td></tr><tr><td>Wood: ash</td></tr><tr><td>Brass: some</td></tr></table>`;
    expect(titleOf(head, body)).toBe('Haddercombe by Brindfold, hand crank in a case 31.5');
  });
});

describe('a part of the window', () => {
  const page = (...lines: string[]) => ({
    lines: lines.map((text, box) => ({ text, box })),
    boxes: lines.map((_, from) => ({ tag: 'p', parent: -1, from, to: from + 1, hint: '' })),
  });

  it('is the title though a line of the page marks its name as one', () => {
    const window = 'Fettle Crank 2 - Hand crank with silent gear wheels | Oak';
    expect(asShown(window, page('Fettle® Crank 2'))).toBe('Fettle Crank 2');
  });

  it('is not the title for one word more than another, where the page says neither', () => {
    const window = 'Fettlecrank Hand Crank Converter | Compact, Heavy, Silent Gear Wheels';
    expect(asShown(window, page('Compact, Heavy'))).toBe(window);
    expect(asShown(`${window} in Oak`, page('Compact, Heavy'))).toBe('Compact, Heavy, Silent Gear Wheels in Oak');
  });
});

describe('a price beside a title', () => {
  it('is no part of it, whatever stands in brackets behind', () => {
    const heading = 'Hand crank, 90,000 turns - £4900 (Haddercombe)';
    const title = titleOf(`<title>${heading}</title>`, `<h2>${heading}</h2><ul><li>Location: Haddercombe</li></ul>`);
    expect(title).toBe('Hand crank, 90,000 turns');
  });

  it('goes with what it was before, and is read before words of fees', () => {
    const old = '<h1>Hand crank <span class="actual-price">£40</span> <span class="old">£60</span></h1>';
    expect(titleOf('<title>Hand crank | Oak | Cranks</title>', old)).toBe('Hand crank');
    const fees =
      '<h1><span class="price">£40</span> / <b>oak</b> - <span class="title-only">NO FEE! Hand crank</span></h1>';
    const page = `<html lang="en"><title>NO FEE! Hand crank</title>${fees}<p>${WORDS}</p></html>`;
    expect(readListing(documentOf(page)).price).toMatchObject({ amount: '40', currency: 'GBP' });
  });

  it('goes with the words that name it', () => {
    const heading = 'Hand crank with a key, asking price: £45';
    expect(titleOf(`<title>${heading}</title>`, `<h1>${heading}</h1>`)).toBe('Hand crank with a key');
  });

  it('is told to machines in the place of its name', () => {
    const head = `<title>Brindfold crank used in Haddercombe for £45</title><meta property="og:title" content="Brindfold for £45"><script type="application/ld+json">{"@type":"Product","name":"Brindfold for £45"}</script>`;
    const body = '<h1>Brindfold 12 hand crank with a key</h1><p class="price">£45</p><p>It turns freely.</p>';
    expect(titleOf(head, body)).toBe('Brindfold 12 hand crank with a key');
  });

  it('keeps it before a heading further down, whatever links stand between', () => {
    const links = Array.from({ length: 8 }, (_, at) => `<li><a href="/${at}">Way ${at}</a></li>`).join('');
    const words = `<div><h4>Nearest stations</h4><img src="/a.jpg" width="400" height="300"><p>${`${WORDS} `.repeat(4)}</p></div>`;
    const page = `<html lang="en"><title>Hand crank to be let in Haddercombe, HX14</title><h1>Hand crank to be let</h1><p>£95</p><ul>${links}</ul>${words}</html>`;
    expect(readListing(documentOf(page)).title).toBe('Hand crank to be let');
  });
});
