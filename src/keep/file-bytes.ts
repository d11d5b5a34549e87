/** What a thread of its own has, see the File API of the W3C; a page and Node have none. */
declare const FileReaderSync: undefined | (new () => { readAsArrayBuffer(file: Blob): ArrayBuffer });

/**
 * Reads bytes of files that stand one behind the other, from a place to before another. A thread of its own reads them
 * there when they are asked for; elsewhere, where nobody may wait for a file, all of them are read at once.
 */
export async function readerOf(files: readonly Blob[]): Promise<(from: number, to: number) => ArrayBuffer> {
  if (typeof FileReaderSync === 'undefined') {
    const all = await new Blob([...files]).arrayBuffer();
    return (from, to) => all.slice(from, to);
  }
  const reader = new FileReaderSync();
  return (from, to) => reader.readAsArrayBuffer(piece(files, from, to));
}

/** A file that is asked for whole is read as it is: of one that is cut the browser has to make another first. */
function piece(files: readonly Blob[], from: number, to: number): Blob {
  const pieces: Blob[] = [];
  let begin = 0;
  for (const file of files) {
    const [low, high] = [Math.max(from - begin, 0), Math.min(to - begin, file.size)];
    if (low < high) pieces.push(high - low === file.size ? file : file.slice(low, high));
    begin += file.size;
  }
  return pieces.length === 1 ? pieces[0]! : new Blob(pieces);
}
