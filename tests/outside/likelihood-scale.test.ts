import { describe, expect, it } from 'vitest';
import { type Sureness, surenessOf } from '../../src/session/sureness';

// Mastrandrea et al. (2010), "Guidance Note for Lead Authors of the IPCC Fifth Assessment Report on Consistent Treatment
// of Uncertainties", table 1: likelihood of the outcome. From memory. Its terms overlap; the narrowest that holds is the
// one to be used.
const TABLE: [term: Sureness, from: number, to: number][] = [
  ['virtually-certain', 0.99, 1],
  ['very-likely', 0.9, 1],
  ['likely', 0.66, 1],
  ['even', 0.33, 0.66],
];

describe('words for probabilities', () => {
  it('are the narrowest of the published scale that hold', () => {
    for (let share = 0; share <= 1000; share += 1) {
      const probability = share / 1000;
      const term = TABLE.find(([, from, to]) => probability >= from && probability <= to)?.[0] ?? 'open';
      // On the border of two terms either holds.
      const border = TABLE.some(([, from, to]) => probability === from || probability === to);
      if (!border) expect([probability, surenessOf(probability)]).toEqual([probability, term]);
    }
  });
});
