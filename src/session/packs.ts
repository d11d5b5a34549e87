import type { KeptPack } from '../keep/schema';
import { knowledgeOf as knownTogether } from '../pack/compile/knowledge-of';
import type { PackIssue } from '../pack/issues';
import type { Knowledge } from '../pack/knowledge';
import type { PackParts } from '../pack/parts';

/** A pack that has been opened: ready to be asked, or what is wrong with it. */
export interface OpenedPack {
  /** null where this version of the program can't read the text; `issues` says why. */
  parts: PackParts | null;
  issues: PackIssue[];
}

/** A pack that came with the extension, by the name of its file. */
export interface ShippedPack extends OpenedPack {
  file: string;
}

export interface InstalledPack extends OpenedPack {
  kept: KeptPack;
}

/** A pack as it stands on the shelf: whether it speaks, and what is wrong with it if it can't. */
export interface ShelvedPack extends OpenedPack {
  id: string;
  edition: number;
  shipped: boolean;
  on: boolean;
  installedAt: string | null;
  /** Fingerprint of the key that sealed it, null for an unsealed one. */
  sealedBy: string | null;
  /** The last day of its edition, YYYY-MM-DD, or null. */
  expires: string | null;
}

/** The shelf in the order in which it is shown: shipped packs first, then by id. */
export function shelved(
  shipped: readonly ShippedPack[],
  installed: readonly InstalledPack[],
  switches: ReadonlyMap<string, boolean>,
): ShelvedPack[] {
  const isOn = (id: string) => switches.get(id) ?? true;
  const ours = shipped.map(({ file, parts, issues }) => {
    const { id, edition } = parts?.about ?? { id: file, edition: 0 };
    return {
      id,
      edition,
      shipped: true,
      on: isOn(id),
      installedAt: null,
      sealedBy: null,
      expires: null,
      parts,
      issues,
    };
  });
  const taken = new Set(ours.map(({ id }) => id));
  const theirs = installed
    .filter(({ kept }) => !taken.has(kept.id))
    .sort((a, b) => (a.kept.id < b.kept.id ? -1 : 1))
    .map(({ kept: { id, edition, installedAt, sealedBy = null, expires = null }, parts, issues }) => {
      return { id, edition, shipped: false, on: isOn(id), installedAt, sealedBy, expires, parts, issues };
    });
  return [...ours, ...theirs];
}

/** What the packs that are switched on know together. */
export function knowledgeOf(shelf: readonly ShelvedPack[]): Knowledge {
  const seals = new Map(shelf.flatMap(({ id, sealedBy }) => (sealedBy === null ? [] : [[id, sealedBy] as const])));
  return knownTogether(
    shelf.flatMap(({ on, parts }) => (on && parts ? [parts] : [])),
    seals,
  );
}
