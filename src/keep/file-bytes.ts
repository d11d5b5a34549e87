/** What a thread of its own has, see the File API of the W3C; a page and Node have none. */
declare const FileReaderSync: undefined | (new () => { readAsArrayBuffer(file: Blob): ArrayBuffer });

/**
 * Reads bytes of a file, from a place to before another. A thread of its own reads them there when they are asked for;
 * elsewhere, where nobody may wait for a file, all of them are read at once.
 */
export async function readerOf(file: Blob): Promise<(from: number, to: number) => ArrayBuffer> {
  if (typeof FileReaderSync === 'undefined') {
    const all = await file.arrayBuffer();
    return (from, to) => all.slice(from, to);
  }
  const reader = new FileReaderSync();
  return (from, to) => reader.readAsArrayBuffer(file.slice(from, to));
}
