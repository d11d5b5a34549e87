import { describe, expect, it } from 'vitest';
import { dayOf, readArguments, webAddress } from '../../../src/cli/arguments';
import { BadInput } from '../../../src/cli/bad-input';

const OPTIONS = { pack: { type: 'string', multiple: true }, json: { type: 'boolean' } } as const;
const read = (...argv: string[]) => readArguments(argv, OPTIONS, 'USAGE');

describe('arguments', () => {
  it('are read', () => {
    const { values, positionals } = read('page.html', '--pack', 'a', '--pack=b', '--json');
    expect(positionals).toEqual(['page.html']);
    expect({ ...values }).toEqual({ pack: ['a', 'b'], json: true });
  });

  it.each([
    [['--colour'], 'unknown option --colour; usage: USAGE'],
    [['-x'], 'unknown option -x; usage: USAGE'],
    [['--pack'], '--pack needs a value; usage: USAGE'],
    [['--pack', '--json'], '--pack needs a value; usage: USAGE'],
    [['--json=yes'], '--json takes no value; usage: USAGE'],
  ])('%j: one line', (argv, line) => {
    expect(() => read(...argv)).toThrow(new BadInput(line));
  });

  it('take a day of the calendar only', () => {
    expect(dayOf('2024-02-29')).toBe('2024-02-29');
    for (const bad of ['2026-02-29', '2026-13-01', '26-01-01', 'today', '', '2026-1-1', '2026-01-01T00:00']) {
      expect(() => dayOf(bad)).toThrow(BadInput);
    }
  });

  it('take an address of the web only', () => {
    expect(webAddress('https://market.example/a b')).toBe('https://market.example/a%20b');
    for (const bad of ['market.example', 'file:///etc/hosts', 'javascript:1', '']) {
      expect(() => webAddress(bad)).toThrow(BadInput);
    }
  });
});
