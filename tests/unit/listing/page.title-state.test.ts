import { expect, it } from 'vitest';
import { isState, withoutState } from '../../../src/listing/page/title-state';

it.each(['For Sale', 'Zu verkaufen', 'À vendre', 'Te koop!', 'Sold', 'Reserviert'])('names nothing: %s', (text) =>
  expect(isState(text)).toBe(true),
);

it.each(['For sale: oak stand', 'Sold as seen: oak stand', 'Oak stand', 'Sale of work'])(
  'may name something: %s',
  (text) => expect(isState(text)).toBe(false),
);

it.each([
  ['Hand crank with a key — Ref# 1372901', 'Hand crank with a key'],
  ['Hand crank with a key Listing ID #113169', 'Hand crank with a key'],
  ['Anzeige 4711: Handkurbel mit Schlüssel', 'Handkurbel mit Schlüssel'],
  ['Annonce n°106898 : manivelle avec une clé', 'manivelle avec une clé'],
  ['No Reserve: Hand crank with a key', 'Hand crank with a key'],
  ['No reserve stock of cranks', 'No reserve stock of cranks'],
  ['Hand crank, serial #1372901', 'Hand crank, serial #1372901'],
  ['Hand crank model #12', 'Hand crank model #12'],
])('is no part of a title that a site numbers it: %s', (text, title) => expect(withoutState(text)).toBe(title));
