import { describe, expect, it } from 'vitest';
import { stateOf } from '../../../src/listing/visit/state';

function found(text: string): string[] {
  const objects = stateOf([text]);
  for (let step = objects.next(); ; step = objects.next()) if (step.done) return step.value.map(({ json }) => json);
}

const THING = '{"title":"Hand crank machine","price":{"amount":45}}';

describe('things for sale in a script', () => {
  it.each([
    ['that is JSON', THING],
    ['that assigns it', `window.state = {"shown":[${THING}]};`],
    ['behind code with brackets and quotation marks', `f('"',[[a]]);g({"a":b});x=[["it's"]];var s = {"is":${THING}};`],
    ['behind a list that never ends', `"title"; a=[["x",[["y"; b = {"is":${THING}}`],
    ['with quotation marks and brackets in its texts', `s={"title":"The \\"small\\" one ]}","price":{"amount":45}};`],
  ])('%s', (_, text) => expect(found(text)).toHaveLength(1));

  it('a script of brackets alone is given up', () => {
    expect(found(`"title": "x" ${'=[[,'.repeat(400_000)}`)).toEqual([]);
    expect(found(`"title": "x" ${'({"a":[['.repeat(200_000)}`)).toEqual([]);
  });
});
