import { describe, expect, it } from 'vitest';
import { readListing } from '../../../src/listing/read';
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
