import fc from 'fast-check';
import { expect, it } from 'vitest';
import { remembered } from '../../../src/listing/page/remembered';

it('a pattern that remembers says what the pattern says, however often it is asked', () => {
  const pattern = /\b(?:price|old-?price)\b|^$/;
  const asked = remembered(pattern);
  const text = fc.oneof(fc.constantFrom('', 'price', 'old-price', 'prices', `price ${'x'.repeat(300)}`), fc.string());
  fc.assert(
    fc.property(fc.array(text, { maxLength: 40 }), (texts) => {
      expect(texts.map((one) => asked.test(one))).toEqual(texts.map((one) => pattern.test(one)));
    }),
  );
});
