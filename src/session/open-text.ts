import { partsOf } from '../pack/compile/parts-of';
import { parsePack } from '../pack/parse';
import type { OpenedPack } from './packs';

/** Reads, checks and makes ready a pack from its text: the slow way, which needs nothing else. */
export function openText(text: string): OpenedPack {
  const read = parsePack(text);
  return read.pack ? { parts: partsOf(read.pack), issues: [] } : { parts: null, issues: read.issues };
}
