import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { BadInput } from '../../../src/cli/bad-input';
import { readText } from '../../../src/cli/input-file';

const folder = mkdtempSync(join(tmpdir(), 'bedplate-'));
afterAll(() => rmSync(folder, { recursive: true }));

describe('a file that the user names', () => {
  it('is read as UTF-8, without its byte-order mark', () => {
    writeFileSync(join(folder, 'a'), '\ufeffzwölf');
    expect(readText(join(folder, 'a'))).toBe('zwölf');
  });

  it('is refused in words where it is missing, a folder, below a file, or not text', () => {
    writeFileSync(join(folder, 'b'), Buffer.from([0x63, 0xff, 0xfe]));
    const refusal = (name: string) => {
      try {
        return readText(join(folder, name));
      } catch (error) {
        expect(error).toBeInstanceOf(BadInput);
        return (error as Error).message.replace(folder, '');
      }
    };
    expect(refusal('none')).toBe('/none: no such file');
    expect(refusal('.')).toBe(': this is a folder, not a file');
    expect(refusal('b/c')).toBe('/b/c: no such file');
    expect(refusal('b')).toBe('/b: not UTF-8 text');
  });
});
