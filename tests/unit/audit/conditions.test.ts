import { describe, expect, it } from 'vitest';
import { type Conditions, factsInForce } from '../../../src/audit/conditions';
import type { Pack } from '../../../src/pack/schema/index';
import { allowed, knowing, modelOf } from '../pack/support/knowledge';
import { smallPack } from '../pack/support/packs';

const UNKNOWN: Conditions = { years: null, place: null, serial: null };

/** What is in force of a model whose feed drops by these facts. */
function inForce(facts: NonNullable<NonNullable<Pack['models']>[number]['facts']>[string], conditions: Conditions) {
  const knowledge = knowing(
    smallPack({
      attributes: [{ id: 'feed', kind: 'yes-no', label: 'drop feed', yes: ['drop feed'] }],
      models: [{ id: 'm', label: 'Ottermere M', names: ['Ottermere M'], facts: { feed: facts } }],
    }),
  );
  const result = factsInForce(modelOf(knowledge, 'small/m'), 'small/feed', conditions);
  return { facts: allowed(result.facts), whole: result.whole };
}

const made = (from: number, to: number): Conditions => ({ ...UNKNOWN, years: { from, to } });

describe('facts that hold for some years', () => {
  const facts = [
    { is: false, when: { made: { to: 1952 } } },
    { is: true, when: { made: { from: 1953 } } },
  ];
  it('the sure one speaks alone', () => {
    expect(inForce(facts, made(1950, 1950))).toEqual({ facts: ['no'], whole: true });
    expect(inForce(facts, made(1955, 1958))).toEqual({ facts: ['yes'], whole: true });
  });
  it('years on both sides leave both, and then nobody is accused', () => {
    expect(inForce(facts, made(1950, 1955))).toEqual({ facts: ['no', 'yes'], whole: false });
    expect(inForce(facts, UNKNOWN)).toEqual({ facts: ['no', 'yes'], whole: false });
  });
});

describe('a general fact and an exception', () => {
  const facts = [{ is: false }, { is: true, when: { places: ['Hallowdene'] } }];
  it('the exception holds where it surely holds', () =>
    expect(inForce(facts, { ...UNKNOWN, place: 'HALLOWDENE' })).toEqual({ facts: ['yes'], whole: true }));
  it('stands beside where it may', () =>
    expect(inForce(facts, UNKNOWN)).toEqual({ facts: ['no', 'yes'], whole: true }));
  it('is gone where it can’t', () =>
    expect(inForce(facts, { ...UNKNOWN, place: 'Elsewhere' })).toEqual({ facts: ['no'], whole: true }));
});

describe('several conditions at once', () => {
  const facts = [{ is: true, when: { made: { from: 1953 }, places: ['Hallowdene'] } }];
  it.each<[string, Conditions, string[], boolean]>([
    ['both hold', { ...made(1955, 1955), place: 'Hallowdene' }, ['yes'], true],
    ['one can’t', { ...made(1950, 1950), place: 'Hallowdene' }, [], false],
    ['one isn’t known', made(1955, 1955), ['yes'], false],
  ])('%s', (_, conditions, expected, whole) => expect(inForce(facts, conditions)).toEqual({ facts: expected, whole }));
});

it('a model without a fact has none in force', () => {
  const knowledge = knowing(smallPack({ models: [{ id: 'm', label: 'M', names: ['Ottermere M'] }] }));
  expect(factsInForce(modelOf(knowledge, 'small/m'), 'small/feed', UNKNOWN)).toEqual({ facts: [], whole: false });
});
