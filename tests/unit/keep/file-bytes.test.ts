import { afterEach, expect, it, vi } from 'vitest';
import { readerOf } from '../../../src/keep/file-bytes';

const files = [new Blob([Uint8Array.of(0, 1, 2)]), new Blob([Uint8Array.of(3, 4, 5, 6, 7)])];
const bytes = (buffer: ArrayBuffer) => [...new Uint8Array(buffer)];

afterEach(() => vi.unstubAllGlobals());

it('reads bytes here and there', async () => {
  const read = await readerOf(files);
  expect([bytes(read(0, 2)), bytes(read(5, 8)), bytes(read(2, 4)), bytes(read(4, 4))]).toEqual([
    [0, 1],
    [5, 6, 7],
    [2, 3],
    [],
  ]);
});

it('reads in a thread of its own only what is asked for, of one file or of both, and a whole one as it is', async () => {
  const asked: Blob[] = [];
  class Waiting {
    readAsArrayBuffer(file: Blob): ArrayBuffer {
      asked.push(file);
      return new ArrayBuffer(file.size);
    }
  }
  vi.stubGlobal('FileReaderSync', Waiting);
  const read = await readerOf(files);
  expect(asked).toEqual([]);
  for (const [from, to] of [
    [4, 6],
    [1, 5],
    [0, 8],
    [8, 8],
    [0, 3],
    [3, 8],
  ] as const)
    expect(read(from, to).byteLength).toBe(to - from);
  const pieces = await Promise.all(asked.slice(0, 4).map((piece) => piece.arrayBuffer()));
  expect(pieces.map(bytes)).toEqual([[4, 5], [1, 2, 3, 4], [0, 1, 2, 3, 4, 5, 6, 7], []]);
  expect(asked.slice(4)).toEqual(files);
  expect([asked[4] === files[0], asked[5] === files[1]]).toEqual([true, true]);
});
