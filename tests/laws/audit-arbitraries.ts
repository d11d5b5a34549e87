import fc from 'fast-check';
import type { Draft } from '../../src/listing/types';
import { text } from './text-arbitraries';

/** Pieces that adverts of the trade are made of, in any order: names, features, denials, years, numbers, other things. */
const PIECES =
  'Cressiter|Grindlewade|Wendelow|Ulversholt Q 41|Fildercott Senior|Cresiter|sewing machine|cast iron|alloy body|not|no|is not|zigzag|' +
  'class 15 bobbin|class 66|vibrating shuttle|drop feed|free arm|3/4 size|treadle|like a|I think it is|this is a|often called|I also have a|' +
  'the case|weighs 9 kg|14.5 kg|18 kg in its case|lightweight|antique|Victorian|rare|only 200 ever made|over 100 years old|industrial|heavy duty|' +
  'made in 1955|made in 1901|bought in 1962|serial number KD372118|KD330000|KO372118|1425000 N|made at Harrowslade|bobbin case for|wanted:|' +
  'job lot of|repairs|good condition|spares or repair|, |. |! |? |: | - |\n|(|)|"|and|but|😀|1)|2)|3)';

const words = fc.array(fc.constantFrom(...PIECES.split('|')), { maxLength: 24 }).map((pieces) => pieces.join(' '));

const field = fc.oneof({ weight: 4, arbitrary: words }, { weight: 1, arbitrary: text });

/** Adverts as they may come: wrongly put together, or no text at all. */
export const anyDraft: fc.Arbitrary<Draft> = fc.record(
  {
    title: field,
    description: field,
    priceText: fc.oneof(fc.constantFrom('£120', '€95', '£9000', '£1', 'free', 'Current bid: £3'), text),
    conditionText: fc.oneof(fc.constantFrom('good', 'worn', 'untested', 'like new'), text),
    serialText: fc.oneof(fc.constantFrom('KD372118', 'KD330000, KD118', 'XZ1', '105000'), text),
    language: fc.constantFrom('en', 'de', 'fr', 'xx'),
  },
  { requiredKeys: [] },
);
