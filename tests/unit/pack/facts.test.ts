import { expect, test } from 'vitest';
import { factList } from '../../../src/pack/facts';
import type { Facts } from '../../../src/pack/schema/models';

test.each<[Facts[string], unknown[]]>([
  ['iron', [{ is: 'iron' }]],
  [true, [{ is: true }]],
  [false, [{ is: false }]],
  [0, [{ is: 0 }]],
  [['iron', 'alloy'], [{ is: ['iron', 'alloy'] }]],
  [{ from: 1, to: 2 }, [{ is: { from: 1, to: 2 } }]],
  [{ to: 2 }, [{ is: { to: 2 } }]],
  [{ is: 'iron', holds: 'usually' }, [{ is: 'iron', holds: 'usually' }]],
  [{ is: ['iron', 'alloy'] }, [{ is: ['iron', 'alloy'] }]],
  [{ is: { from: 1 } }, [{ is: { from: 1 } }]],
  [
    [{ is: 'iron' }, { is: { to: 3 }, source: 'a' }],
    [{ is: 'iron' }, { is: { to: 3 }, source: 'a' }],
  ],
])('%j in full', (fact, list) => {
  expect(factList(fact)).toEqual(list);
});
