import { expect, it } from 'vitest';
import { isState } from '../../../src/listing/page/title-state';

it.each(['For Sale', 'Zu verkaufen', 'À vendre', 'Te koop!', 'Sold', 'Reserviert'])('names nothing: %s', (text) =>
  expect(isState(text)).toBe(true),
);

it.each(['For sale: oak stand', 'Sold as seen: oak stand', 'Oak stand', 'Sale of work'])(
  'may name something: %s',
  (text) => expect(isState(text)).toBe(false),
);
