import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wellDecoded } from '../../../../src/listing/decide/mis-decoded';

/** A text as it comes out where its UTF-8 was taken for windows-1252, by the platform's own decoder. */
const broken = (text: string) => new TextDecoder('windows-1252').decode(new TextEncoder().encode(text));

describe('text that was decoded wrongly', () => {
  it.each(['£45', 'it’s', '12 € – 14 €', 'Größe, Öl, ß', 'Café “crème”', '½ inch', '😀', 'Żółw'])(
    '%s comes back',
    (text) => {
      expect(broken(text)).not.toBe(text);
      expect(wellDecoded(broken(text))).toBe(text);
    },
  );

  it('comes back whatever it was', () => {
    const text = fc.string({ unit: fc.constantFrom('a', ' ', 'é', 'ß', '£', '€', '’', '–', 'ж', '½', '😀') });
    fc.assert(
      fc.property(text, (whole) => {
        expect(wellDecoded(broken(whole))).toBe(whole);
      }),
    );
  });

  it.each(['Âge', 'Ça va', 'Ärger', 'Ñandú, Über, Åse', 'ÀÉÎ', 'â la', 'naïve', '5 °C'])(
    '%s was never broken',
    (text) => {
      expect(wellDecoded(text)).toBe(text);
    },
  );

  it('the no-break space between a code and its amount too', () => {
    expect(wellDecoded('GBP\u00c2 12,99')).toBe('GBP 12,99');
  });
});
