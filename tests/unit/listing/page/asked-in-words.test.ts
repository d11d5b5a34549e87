import { describe, expect, it } from 'vitest';
import { askedInWords } from '../../../../src/listing/page/asked-in-words';

describe('a price told in the words', () => {
  it.each([
    ['It was my aunt’s. I would like £45 for it, cash.', 'en', '£45'],
    ['I paid £140 for it, asking £60 ono.', 'en', '£60'],
    ['It can be yours for €25, plus postage at cost (about €14).', 'en', '€25'],
    ['Asking $275 shipped, or $235 if you come to the shop.', 'en', '$275'],
    ['£40 to the first who can carry it down.', 'en', '£40'],
    ['Neu hat sie 400 € gekostet, ich hätte gern 80 € dafür.', 'de', '80 €'],
    ['Je la vends 45 €, elle m’a coûté 120 €.', 'fr', '45 €'],
    ['Ik vraag er 60 euro voor, afhalen.', 'nl', '60 euro'],
    ['Chiedo 90 euro, non trattabili.', 'it', '90 euro'],
    ['Pido 35 € por ella.', 'es', '35 €'],
    ['A good machine with a case. £30. Ring after six.', 'en', '£30'],
  ])('%s', (words, language, price) => {
    expect(askedInWords(words, { language })?.text).toBe(price);
  });

  it.each([
    ['I paid £140 for it ten years ago and £60 for a new motor.', 'en'],
    ['Similar ones are worth £200 elsewhere.', 'en'],
    ['Postage would be £12.', 'en'],
    ['Ring 01632 960177 after six, made in 1951, weighs 12 kg.', 'en'],
    ['Neupreis 400 €.', 'de'],
    ['', 'en'],
  ])('%s asks nothing', (words, language) => {
    expect(askedInWords(words, { language })).toBeNull();
  });
});
