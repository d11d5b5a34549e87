import { expect, it } from 'vitest';
import type { Connection } from '../../../../src/cli/demo/bidi';
import { clickIn } from '../../../../src/cli/demo/bidi-hands';

/** A page that draws what is pressed only at the so-manieth look; what is sent to it as input is kept. */
function slowPage(looksBefore: number): { connection: Connection; pressed: object[] } {
  const pressed: object[] = [];
  let looks = 0;
  const answer = (expression: string): unknown => {
    if (expression.includes('pressMissed = true')) return { x: 12, y: 34 };
    if (expression.includes('pressMissed === true')) return false;
    looks += 1;
    return looks > looksBefore;
  };
  const connection: Connection = {
    async send(method, params) {
      if (method === 'input.performActions') {
        pressed.push(params);
        return { result: {} };
      }
      const value = answer((params as { expression: string }).expression);
      const result =
        typeof value === 'boolean'
          ? { type: 'boolean', value }
          : {
              type: 'object',
              value: Object.entries(value as object).map(([k, v]) => [k, { type: 'number', value: v }]),
            };
      return { result: { type: 'success', result } };
    },
    on: () => undefined,
  };
  return { connection, pressed };
}

it('a press waits until the page has drawn what it is meant for', async () => {
  const { connection, pressed } = slowPage(3);
  await clickIn(connection, 'context', '#late', 5_000);
  expect(pressed).toHaveLength(1);
  expect(JSON.stringify(pressed[0])).toContain('"x":12,"y":34');
});

it('and says so where that never comes', async () => {
  const { connection, pressed } = slowPage(Infinity);
  await expect(clickIn(connection, 'context', '#never', 120)).rejects.toThrow('nothing matches #never');
  expect(pressed).toEqual([]);
});
