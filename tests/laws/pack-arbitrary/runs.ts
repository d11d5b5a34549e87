import fc from 'fast-check';
import type { Scheme, Serials } from '../../../src/pack/schema/serials';
import { digitRange, writtenIn } from '../../../src/pack/serial-form';
import { date, maybe, refTo, text, year } from './parts';
import type { Skeleton } from './skeleton';

/** First and last number of a run of this scheme, as a table prints them: whole, spaced, or digits alone. */
export function numbersOf(scheme: Scheme): fc.Arbitrary<[string, string]> {
  const most = 10 ** digitRange(scheme)[1] - 1;
  const number = fc.integer({ min: 0, max: Math.min(most, Number.MAX_SAFE_INTEGER) });
  // Digits alone would be read as a whole number where the prefix and suffix are digits themselves.
  const digitsAlone = /^[A-Z]/.test(scheme.prefix) || scheme.prefix + (scheme.suffix ?? '') === '';
  const printed = (n: number, how: number): string => {
    const whole = writtenIn(scheme, n);
    if (how === 0 && digitsAlone) return String(n);
    return how === 1 ? whole.toLowerCase().replace(/^(.)(.)/, '$1 $2') : whole;
  };
  return fc
    .tuple(number, number, fc.nat(2), fc.nat(2))
    .map(([a, b, how, other]) => [printed(Math.min(a, b), how), printed(Math.max(a, b), other)]);
}

export function serials(skeleton: Skeleton): fc.Arbitrary<Serials> {
  const { schemes, models, types, own, sources } = skeleton;
  const refs = refTo([...models, ...types], own);
  const runs = schemes.map((scheme) =>
    fc.record({
      scheme: fc.constant(scheme.id),
      ends: numbersOf(scheme),
      models: fc.array(refs, { maxLength: 2 }),
      year: fc.option(year),
      date: fc.option(date),
      place: fc.option(text),
      source: fc.option(maybe('one', sources).one ?? fc.constant(null)),
    }),
  );
  const list = runs.length > 0 ? fc.array(fc.oneof(...runs), { maxLength: 6 }) : fc.constant([]);
  return fc
    .tuple(list, fc.record({ year: fc.boolean(), date: fc.boolean(), place: fc.boolean(), source: fc.boolean() }))
    .map(([rows, has]) => ({
      schemes,
      runs: {
        scheme: rows.map((row) => row.scheme),
        first: rows.map((row) => row.ends[0]),
        last: rows.map((row) => row.ends[1]),
        models: rows.map((row) => row.models),
        ...(has.year ? { year: rows.map((row) => row.year) } : {}),
        ...(has.date ? { date: rows.map((row) => row.date) } : {}),
        ...(has.place ? { place: rows.map((row) => row.place) } : {}),
        ...(has.source ? { source: rows.map((row) => row.source) } : {}),
      },
    }));
}
