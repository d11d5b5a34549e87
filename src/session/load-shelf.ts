import { putCompiled, readCompiled, sweepCompiled } from '../keep/compiled';
import type { Database } from '../keep/open';
import { noteHash, readShelf, readText } from '../keep/packs';
import type { KeptPack } from '../keep/schema';
import type { Kept } from '../keep/trouble';
import { contentHash } from '../pack/compiled/content-hash';
import { partsIn } from '../pack/compiled/read';
import { bytesOf } from '../pack/compiled/write';
import { type InstalledPack, type OpenedPack, type ShelvedPack, type ShippedPack, shelved } from './packs';

/** What reads and checks a pack's text. */
export type OpenText = (text: string) => OpenedPack | Promise<OpenedPack>;

/** A pack that came with the extension: its file's text. */
export interface ShippedText {
  file: string;
  text: string;
}

/**
 * The shipped packs and the user's own, ready to be asked. What was made ready before, by this version of the engine
 * from the same text, is taken as it lies there; everything else is read from its text, checked, and kept for the next
 * time. What can't be kept is made anew each time: slower, and nothing else.
 * @param engine the version of the engine
 * @param openText reads a pack from its text; asked for only where nothing lies ready
 */
export async function loadShelf(
  db: Database,
  shipped: readonly ShippedText[],
  engine: string,
  openText: OpenText,
): Promise<Kept<ShelvedPack[]>> {
  const shelf = await readShelf(db);
  if (!shelf.ok) return shelf;
  const ours: ShippedPack[] = [];
  const hashes: string[] = [];
  for (const { file, text } of shipped) {
    const hash = await contentHash(text);
    hashes.push(hash);
    ours.push({ file, ...((await made(db, engine, hash)) ?? (await make(db, engine, hash, text, openText))) });
  }
  const theirs: InstalledPack[] = [];
  for (const kept of shelf.value.packs) {
    const opened = await openKept(db, kept, engine, openText);
    if (!opened.ok) return opened;
    theirs.push({ kept, ...opened.value });
  }
  await sweepCompiled(db, engine, hashes);
  return { ok: true, value: shelved(ours, theirs, shelf.value.switches) };
}

async function openKept(db: Database, kept: KeptPack, engine: string, openText: OpenText): Promise<Kept<OpenedPack>> {
  const ready = kept.hash === undefined ? null : await made(db, engine, kept.hash);
  if (ready) return { ok: true, value: ready };
  const text = await readText(db, kept.id);
  if (!text.ok) return text;
  const hash = await contentHash(text.value ?? '');
  if (hash !== kept.hash) await noteHash(db, kept, hash);
  return { ok: true, value: await make(db, engine, hash, text.value ?? '', openText) };
}

/** What lies there ready, or null where nothing does, or nothing that can be read. */
async function made(db: Database, engine: string, hash: string): Promise<OpenedPack | null> {
  const bytes = await readCompiled(db, engine, hash);
  const parts = bytes.ok && bytes.value ? partsIn(bytes.value) : null;
  return parts && { parts, issues: [] };
}

async function make(db: Database, engine: string, hash: string, text: string, openText: OpenText): Promise<OpenedPack> {
  const opened = await openText(text);
  if (!opened.parts) return opened;
  const { buffer: bytes } = bytesOf(opened.parts);
  await putCompiled(db, [{ engine, hash, bytes }]);
  // What was read as objects is let go of: a million runs take a twentieth of the memory as bytes.
  return { parts: partsIn(bytes), issues: [] };
}
