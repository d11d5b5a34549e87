import { describe, expect, it } from 'vitest';
import { printable, printableJson } from '../../../src/cli/printable';

describe('a text of unknown origin on a terminal', () => {
  it('moves no cursor and sets no colour', () => {
    expect(printable('a\u001b[31mred\u009b2Jb\u0007')).toBe('a\\u001b[31mred\\u009b2Jb\\u0007');
  });

  it('turns no reading direction', () => {
    expect(printable('K\u202e712\u2066')).toBe('K\\u202e712\\u2066');
  });

  it('keeps line breaks, of whatever kind, and all other writing', () => {
    expect(printable('eins\r\nzwei\rdrei\n\tvier – ½ kg')).toBe('eins\nzwei\ndrei\n\tvier – ½ kg');
  });

  it('is the same value in JSON', () => {
    const value = { a: 'x\u001b\u009b\u202ey\u2028z' };
    const json = printableJson(value);
    expect(json).not.toMatch(/[\u0080-\uffff\u001b]/);
    expect(JSON.parse(json)).toEqual(value);
  });
});
