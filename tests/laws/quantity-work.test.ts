import { describe, expect, it } from 'vitest';
import { findLengths, findWeights } from '../../src/quantity/measures';
import { findMoney, readMoney } from '../../src/quantity/money';
import { findSerialShapes, findSerials } from '../../src/quantity/serials';
import { findYears } from '../../src/quantity/years';
import { HOSTILE } from './hostile-repeats';

/**
 * How much text the patterns were given to look through while `run` ran: counted, not timed. A pattern that looks
 * from a place on (sticky) is counted by what it matched; any other by the way to its match, or to the end.
 */
function textSearched(run: () => void): number {
  const exec = RegExp.prototype.exec;
  let searched = 0;
  RegExp.prototype.exec = function (this: RegExp, text: string) {
    const from = this.global || this.sticky ? this.lastIndex : 0;
    const match = exec.call(this, text);
    const to = match ? match.index + match[0].length : this.sticky ? from : text.length;
    searched += 1 + Math.max(0, to - from);
    return match;
  };
  try {
    run();
  } finally {
    RegExp.prototype.exec = exec;
  }
  return searched;
}

const READERS: [name: string, read: (text: string) => unknown][] = [
  ['readMoney', (text) => readMoney(text)],
  ['findMoney', (text) => findMoney(text)],
  ['findWeights', (text) => findWeights(text)],
  ['findLengths', (text) => findLengths(text)],
  ['findYears', (text) => findYears(text)],
  ['findSerials', (text) => findSerials(text)],
  ['findSerialShapes', (text) => findSerialShapes(text)],
];
const ONCE = 300;
const mostForTwice = (once: number) => 2.2 * once + 500;

it('the counting notices a reader that looks from every place to the end', () => {
  const careless = (text: string) => {
    for (let at = 0; at < text.length; at++) /x$/.test(text.slice(at));
  };
  const once = textSearched(() => careless('1 '.repeat(ONCE)));
  expect(textSearched(() => careless('1 '.repeat(2 * ONCE)))).toBeGreaterThan(mostForTwice(once));
});

describe.each(READERS)('%s: the work grows with the text, not faster', (_, read) => {
  it.each(HOSTILE)('%j over and over', (part) => {
    read(part);
    const once = textSearched(() => read(part.repeat(ONCE)));
    const twice = textSearched(() => read(part.repeat(2 * ONCE)));
    expect(twice).toBeLessThanOrEqual(mostForTwice(once));
  });
});
