import type { Kept } from '../keep/trouble';
import { DamagedError } from '../pack/compiled/pages';

/**
 * Works with packs of which no more is read than the work asks for. Where that comes upon damaged bytes, the packs are
 * mended and the work is done once more, from its beginning.
 * @param mend reads the packs so that nothing damaged is among them
 */
export async function mending<P, T>(
  packs: P,
  mend: () => Promise<Kept<P>>,
  work: (packs: P) => T | Promise<T>,
): Promise<Kept<T>> {
  try {
    return { ok: true, value: await work(packs) };
  } catch (error) {
    if (!(error instanceof DamagedError)) throw error;
    const mended = await mend();
    return mended.ok ? { ok: true, value: await work(mended.value) } : mended;
  }
}
