import type { Shelf } from '../keep/packs';
import { compile } from '../pack/compile';
import type { PackIssue } from '../pack/issues';
import type { Knowledge } from '../pack/knowledge';
import { parsePack } from '../pack/parse';
import type { Pack } from '../pack/schema/index';

/** A pack that came with the extension: its file's text. */
export interface ShippedText {
  file: string;
  text: string;
}

/** A pack as it stands on the shelf: whether it speaks, and what is wrong with it if it can't. */
export interface ShelvedPack {
  id: string;
  edition: number;
  shipped: boolean;
  on: boolean;
  installedAt: string | null;
  /** Fingerprint of the key that sealed it, null for an unsealed one. */
  sealedBy: string | null;
  /** null where this version of the program can't read the kept text; `issues` says why. */
  pack: Pack | null;
  issues: PackIssue[];
}

/** The shelf in the order in which it is shown: shipped packs first, then by id. */
export function shelved(shipped: readonly ShippedText[], shelf: Shelf): ShelvedPack[] {
  const isOn = (id: string) => shelf.switches.get(id) ?? true;
  const ours = shipped.map(({ file, text }) => {
    const read = readPack(text);
    const id = read.pack?.about.id ?? file;
    const edition = read.pack?.about.edition ?? 0;
    return { id, edition, shipped: true, on: isOn(id), installedAt: null, sealedBy: null, ...read };
  });
  const taken = new Set(ours.map(({ id }) => id));
  const theirs = shelf.packs
    .filter(({ id }) => !taken.has(id))
    .sort((a, b) => (a.id < b.id ? -1 : 1))
    .map(({ id, edition, text, installedAt, sealedBy = null }) => {
      return { id, edition, shipped: false, on: isOn(id), installedAt, sealedBy, ...readPack(text) };
    });
  return [...ours, ...theirs];
}

/** What the packs that are switched on know together. */
export function knowledgeOf(shelf: readonly ShelvedPack[]): Knowledge {
  const seals = new Map(shelf.flatMap(({ id, sealedBy }) => (sealedBy === null ? [] : [[id, sealedBy] as const])));
  return compile(
    shelf.flatMap(({ on, pack }) => (on && pack ? [pack] : [])),
    seals,
  );
}

function readPack(text: string): { pack: Pack | null; issues: PackIssue[] } {
  const read = parsePack(text);
  return read.pack ? { pack: read.pack, issues: [] } : { pack: null, issues: read.issues };
}
