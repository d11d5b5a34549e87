import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { matchesNear } from '../../src/claims/matches-near';
import { scanNumerals } from '../../src/quantity/numerals';
import { yearCores } from '../../src/quantity/year-cores';
import { fold } from '../../src/text/fold';
import { TIMES } from './pack-arbitrary/times';
import { text } from './text-arbitraries';

const RUNS = { numRuns: 500 * TIMES };

const PIECES =
  "annees 1950|années 50|5annees 1950|1950er Jahre|1950s|50s|'60s|50-60er|50-60er Jahre|der 50er|aus den 60er Jahren|die 20ern|" +
  'fifties|nineteen-fifties|zwanziger|dreissiger Jahre|annees vingt|19th century|19 c.|19. Jh.|xixe siecle|' +
  'turn of the last century|jahrhundertwende|1954|19545|954|2000s|1900s|1|.99|£.99|€ .5|1.340,5|1 340 500|½|10½|,|-|/|\n|over 20|' +
  'WELL OVER 30|well over|ſame of 3|over ſix|één of 4|one of 11|none of 5|over\u200b 6|over\u0301 7';
const written = fc.oneof(
  text,
  fc
    .array(fc.constantFrom(...PIECES.split('|')), { maxLength: 12 })
    .chain((pieces) => fc.constantFrom(' ', '', ', ').map((joint) => pieces.join(joint))),
);

describe('quick ways to find numbers find what the slow ones do', () => {
  it('numbers: where digits begin, as at every place', () =>
    fc.assert(
      fc.property(written, (one) => {
        const folded = fold(one).text;
        const everywhere = /\d+(?:[.,'٬٫]\d+| \d{3}(?!\d)){0,7}|(?<=\p{Sc} ?)\.\d{1,2}(?!\d)/gu;
        expect(scanNumerals(folded).map(({ start, end }) => [start, end])).toEqual(
          Array.from(folded.matchAll(everywhere), ({ index, 0: { length } }) => [index, index + length]),
        );
      }),
      RUNS,
    ));

  it('years: a text that has a piece of every form is looked through for each of them', () =>
    fc.assert(
      fc.property(written, (one) => {
        const folded = fold(one).text;
        const every =
          "\n.\n0s 0's 0ies 0er annees ties ziger siger century c. jh jahrh siecle turn of the jahrhundertwendex tournant";
        expect(yearCores(folded)).toEqual(yearCores(folded + every));
      }),
      RUNS,
    ));

  it('statements with a number: near the words they begin with, as at every place', () =>
    fc.assert(
      fc.property(written, (one) => {
        const statement = '\\b(?:over|well over|one of|same of) (\\d+|six)\\b';
        const near = matchesNear(one, new RegExp(statement, 'iuy'), /over|well over|one of|same of/g);
        const everywhere = [...one.matchAll(new RegExp(statement, 'giu'))];
        expect(near.map(({ index, 0: quote }) => [index, quote])).toEqual(
          everywhere.map(({ index, 0: quote }) => [index, quote]),
        );
      }),
      RUNS,
    ));
});
