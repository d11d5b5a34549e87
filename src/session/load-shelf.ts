import { putCompiled, readCompiled, sweepCompiled } from '../keep/compiled';
import { readLayers } from '../keep/layers';
import type { Database } from '../keep/open';
import { noteHash, readShelf, readText } from '../keep/packs';
import type { KeptLayer, KeptPack } from '../keep/schema';
import type { Kept } from '../keep/trouble';
import { contentHash } from '../pack/compiled/content-hash';
import { partsIn, partsStored } from '../pack/compiled/read';
import { bytesOf } from '../pack/compiled/write';
import { type InstalledPack, type OpenedPack, type ShelvedPack, type ShippedPack, shelved } from './packs';

/** What reads and checks a pack's text, with what the user has changed of the pack, if anything. */
export type OpenText = (text: string, layer: KeptLayer | null) => OpenedPack | Promise<OpenedPack>;

/** A pack that came with the extension: its file's text. */
export interface ShippedText {
  file: string;
  text: string;
}

/**
 * The shipped packs and the user's own, ready to be asked. What was made ready before, by this version of the engine
 * from the same text, is taken as it lies there; everything else is read from its text, checked, and kept for the next
 * time. What can't be kept is made anew each time: slower, and nothing else.
 *
 * Of what lies ready only that is read, and looked at for damage, which is asked for: whoever asks may be told of it by
 * a DamagedError, see mending.ts.
 * @param engine the version of the engine
 * @param openText reads a pack from its text; asked for only where nothing lies ready
 * @param whole all that lies ready is read and looked at, so that nothing is told of damage later
 */
export async function loadShelf(
  db: Database,
  shipped: readonly ShippedText[],
  engine: string,
  openText: OpenText,
  whole = false,
): Promise<Kept<ShelvedPack[]>> {
  const compiled: CompiledPacks = { db, engine, whole };
  const shelf = await readShelf(db);
  if (!shelf.ok) return shelf;
  const ours: ShippedPack[] = [];
  const hashes: string[] = [];
  for (const { file, text } of shipped) {
    const hash = await contentHash(text);
    hashes.push(hash);
    ours.push({
      file,
      ...((await made(compiled, hash)) ?? (await make(compiled, hash, () => openText(text, null)))),
    });
  }
  const layers = await readLayers(db);
  if (!layers.ok) return layers;
  const theirs: InstalledPack[] = [];
  for (const kept of shelf.value.packs) {
    const opened = await openKept(compiled, kept, layers.value.get(kept.id) ?? null, openText);
    if (!opened.ok) return opened;
    const { hash, ...pack } = opened.value;
    hashes.push(hash);
    theirs.push({ kept, ...pack });
  }
  await sweepCompiled(db, engine, hashes);
  return { ok: true, value: shelved(ours, theirs, shelf.value.switches) };
}

interface CompiledPacks {
  db: Database;
  engine: string;
  whole: boolean;
}

async function openKept(
  compiled: CompiledPacks,
  kept: KeptPack,
  layer: KeptLayer | null,
  openText: OpenText,
): Promise<Kept<OpenedPack & { hash: string }>> {
  const { db } = compiled;
  let own = kept.hash === undefined ? null : await hashWith(layer, kept.hash);
  const ready = own === null ? null : await made(compiled, own);
  if (own !== null && ready) return { ok: true, value: { ...ready, hash: own } };
  const text = await readText(db, kept.id);
  if (!text.ok) return text;
  const hash = await contentHash(text.value ?? '');
  if (hash !== kept.hash) await noteHash(db, kept, hash);
  own = await hashWith(layer, hash);
  const opened = await make(compiled, own, () => openText(text.value ?? '', layer));
  return { ok: true, value: { ...opened, hash: own } };
}

/** What the pack's text is known by together with what the user has changed of it. */
async function hashWith(layer: KeptLayer | null, hash: string): Promise<string> {
  return layer ? contentHash(`${hash}\n${JSON.stringify(layer.changes)}`) : hash;
}

/** What lies there ready, or null where nothing does, or nothing that can be read. */
async function made({ db, engine, whole }: CompiledPacks, hash: string): Promise<OpenedPack | null> {
  const stored = await readCompiled(db, engine, hash);
  const parts = stored.ok && stored.value ? partsStored(stored.value, whole) : null;
  return parts && { parts, issues: [] };
}

async function make(
  { db, engine }: CompiledPacks,
  hash: string,
  open: () => OpenedPack | Promise<OpenedPack>,
): Promise<OpenedPack> {
  const opened = await open();
  if (!opened.parts) return opened;
  const { buffer: bytes } = bytesOf(opened.parts);
  await putCompiled(db, [{ engine, hash, bytes }]);
  // What was read as objects is let go of: a million runs take a twentieth of the memory as bytes.
  return { parts: partsIn(bytes), issues: [] };
}
