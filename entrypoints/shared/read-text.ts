import type { PackIssue } from '../../src/pack/issues';
import { installTexts as texts } from '../../src/text/catalogue/workbench';

/** Bytes. A pack with a million runs has about 60 MB. */
const LARGEST = 100_000_000;

/**
 * The text of a chosen file, read piece by piece. One that isn't UTF-8 is refused rather than read with holes in it,
 * and one that is too large is not begun.
 * @param together bytes of all files that were chosen at once: their texts are held until all of them are checked
 * @param progress told how many bytes have been read
 */
export async function readText(
  file: File,
  together: number,
  progress: (done: number) => void,
): Promise<string | PackIssue> {
  const refuse = (what: string, expected: string): PackIssue => ({ path: '', what, expected });
  const megabytes = (bytes: number) => Math.ceil(bytes / 1e6);
  if (file.size > LARGEST) return refuse(texts.tooLarge(megabytes(file.size)), texts.atMost(megabytes(LARGEST)));
  if (together > LARGEST) return refuse(texts.tooLargeTogether(megabytes(together)), texts.fewer(megabytes(LARGEST)));
  try {
    const decoder = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true });
    const reader = file.stream().getReader();
    const parts: string[] = [];
    let done = 0;
    progress(done);
    for (let piece = await reader.read(); !piece.done; piece = await reader.read()) {
      parts.push(decoder.decode(piece.value, { stream: true }));
      const before = Math.floor((done * 100) / file.size);
      done += piece.value.byteLength;
      if (Math.floor((done * 100) / file.size) > before) progress(done);
    }
    parts.push(decoder.decode());
    return parts.join('');
  } catch {
    return refuse(texts.unreadable, texts.readable);
  }
}
