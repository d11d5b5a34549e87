import { describe, expect, it } from 'vitest';
import { remembering } from '../../../src/text/remember';

const long = (name: string): string => name.padEnd(80, '.');

function counted() {
  const asked: string[] = [];
  const read = remembering((text: string) => {
    asked.push(text.slice(0, 2).replaceAll('.', ''));
    return { length: text.length };
  });
  return { asked, read };
}

describe('a reader that remembers', () => {
  it('reads a text once, however often it is asked', () => {
    const { asked, read } = counted();
    expect(read(long('a'))).toBe(read(long('a')));
    expect(asked).toEqual(['a']);
  });

  it('answers each text by itself', () => {
    const { asked, read } = counted();
    expect(read(long('a'))).not.toBe(read(long('b')));
    expect(read(long('a')).length).toBe(80);
    expect(read(`${long('a')}!`).length).toBe(81);
    expect(asked).toEqual(['a', 'b', 'a']);
  });

  it('keeps the last eight only', () => {
    const { asked, read } = counted();
    for (const name of ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h', 'i']) read(long(name));
    read(long('i'));
    expect(asked).toHaveLength(9);
    read(long('a'));
    expect(asked).toHaveLength(10);
  });

  it('keeps the last four short ones', () => {
    const { asked, read } = counted();
    expect(read('a')).toBe(read('a'));
    for (const name of ['b', 'c', 'd']) read(name);
    read('a');
    expect(asked).toEqual(['a', 'b', 'c', 'd']);
    read('e');
    read('a');
    expect(asked).toEqual(['a', 'b', 'c', 'd', 'e', 'a']);
  });

  it('keeps short and long ones apart', () => {
    const { asked, read } = counted();
    read(long('a'));
    for (const name of ['b', 'c', 'd', 'e', 'f', 'g', 'h', 'i', 'j']) read(name);
    read(long('a'));
    expect(asked).toHaveLength(10);
  });
});
