import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { absolute, resolved } from '../../../src/listing/visit/addresses';

const BASE = 'https://market.example/ad/417';

/** What the platform's own URL makes of it. */
const byPlatform = (address: string): string | null => {
  try {
    return new URL(address, BASE).href;
  } catch {
    return null;
  }
};

describe('an address', () => {
  it('is resolved as the platform resolves it', () => {
    const part = fc.constantFrom(
      ...['a', 'B', '1', '-', '_', '.', '..', '/', '//', ':', '%41', 'xn--a', '?q', '#f', ' ', 'é', 'jpg', '@', '0x7'],
    );
    const rest = fc.array(part, { maxLength: 8 }).map((parts) => parts.join(''));
    const host = fc.constantFrom('market.example', 'a.b-c.example', 'MARKET.example', '1.2.3.4', '-x.example', 'x..y');
    const whole = fc.tuple(
      fc.constantFrom('https://', 'http://', 'HTTPS://'),
      host,
      fc.constantFrom('/', '', ':80/'),
      rest,
    );
    const address = fc.oneof(
      rest,
      whole.map((parts) => parts.join('')),
    );
    fc.assert(
      fc.property(address, (one) => {
        expect(resolved(one, BASE)).toBe(byPlatform(one));
      }),
      { numRuns: 3000 },
    );
  });

  it('that is none of the web is none', () => {
    expect(absolute(' /p/1.jpg ', BASE)).toBe('https://market.example/p/1.jpg');
    expect(absolute('data:image/png;base64,AA', BASE)).toBeNull();
  });
});
