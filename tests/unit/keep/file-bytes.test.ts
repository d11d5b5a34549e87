import { afterEach, expect, it, vi } from 'vitest';
import { readerOf } from '../../../src/keep/file-bytes';

const file = new Blob([Uint8Array.of(0, 1, 2, 3, 4, 5, 6, 7)]);
const bytes = (buffer: ArrayBuffer) => [...new Uint8Array(buffer)];

afterEach(() => vi.unstubAllGlobals());

it('reads bytes here and there', async () => {
  const read = await readerOf(file);
  expect([bytes(read(0, 2)), bytes(read(5, 8)), bytes(read(4, 4))]).toEqual([[0, 1], [5, 6, 7], []]);
});

it('reads in a thread of its own only what is asked for', async () => {
  const asked: number[] = [];
  class Waiting {
    readAsArrayBuffer({ size }: Blob): ArrayBuffer {
      asked.push(size);
      return new ArrayBuffer(size);
    }
  }
  vi.stubGlobal('FileReaderSync', Waiting);
  const read = await readerOf(file);
  expect(asked).toEqual([]);
  expect(read(2, 5).byteLength).toBe(3);
  expect(asked).toEqual([3]);
});
