import { expect, it } from 'vitest';
import { withoutPlace } from '../../../../src/listing/decide/place-in-title';

it.each([
  ['Green portable typewriter in Netherholme', 'Netherholme', 'Green portable typewriter'],
  ['Máquina de escribir en Peñarrubla', 'Peñarrubla (Valdehondo)', 'Máquina de escribir'],
  ['Tretmaschine, Guss - Krummwede', '29410 Krummwede', 'Tretmaschine, Guss'],
  ['Hand crank (Stavermoor)', 'Stavermoor', 'Hand crank'],
])('%s without %s', (title, place, bare) => {
  expect(withoutPlace(title, place)).toBe(bare);
});

it.each([
  ['Netherholme', 'Netherholme'],
  ['Made in Netherholme, 1931', 'Netherholme'],
  ['Old lockstitch', 'Stitch'],
  ['The bells of Netherholme', 'Netherholme'],
  ['Cast treadle 1600 - Brindfold', '1600 Brindfold'],
  ['Workshop to let in Treadle Lane, 54', 'Treadle Lane, 54'],
])('%s keeps its own words', (title, place) => {
  expect(withoutPlace(title, place)).toBe(title);
});
