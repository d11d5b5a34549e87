import type { Pack } from '../../pack/schema/index';
import { FINGERPRINT_LENGTH, isFingerprint } from './fingerprint';

/*
 * The id of a sealed pack is its name, a hyphen, and the fingerprint of the key that sealed its first edition:
 * "selvage-bench-mz4k…". Whoever has not that key can't make a pack of that id, so neither a stranger's file nor an
 * unsealed one can take its place, and a reference from another pack ("that id/entry") means one keeper's entry only.
 */

/** Ids have 80 characters at most. */
const LONGEST_NAME = 80 - FINGERPRINT_LENGTH - 1;

export interface SplitId {
  name: string;
  /** Of the founding key; null: an id that no sealed pack has. */
  founder: string | null;
}

export function splitId(id: string): SplitId {
  const at = id.lastIndexOf('-');
  const end = id.slice(at + 1);
  return at > 0 && isFingerprint(end) ? { name: id.slice(0, at), founder: end } : { name: id, founder: null };
}

/** The id of the pack of this name that such a key founds. A name too long for it is cut. */
export function sealedId(id: string, fingerprint: string): string {
  return `${splitId(id).name.slice(0, LONGEST_NAME).replace(/-+$/, '')}-${fingerprint}`;
}

/**
 * The pack under another id, for its first publication: its own id, and every reference of its own that names it in full
 * ("old-id/entry"), wherever the format has references. Texts stay as they are.
 */
export function withId(pack: Pack, id: string): Pack {
  const old = pack.about.id;
  if (old === id) return pack;
  const renamed = rename({ ...pack, about: undefined }, `${old}/`, `${id}/`, null) as Pack;
  const { covers } = pack.about;
  const first = covers.first?.startsWith(`${old}/`) ? `${id}/${covers.first.slice(old.length + 1)}` : covers.first;
  return { ...renamed, about: { ...pack.about, id, covers: first === undefined ? covers : { ...covers, first } } };
}

/** Keys under which an id or a reference stands, alone or in a list. */
const REFERENCES = new Set(['family', 'type', 'model', 'models', 'attribute', 'settles']);
/** Keys under which a table lies whose keys are references. */
const TABLES = new Set(['facts', 'necessary', 'where']);

function rename(value: unknown, from: string, to: string, under: string | null): unknown {
  if (typeof value === 'string')
    return under !== null && REFERENCES.has(under) && value.startsWith(from) ? to + value.slice(from.length) : value;
  // A list of runs' models is a list of lists.
  if (Array.isArray(value)) return value.map((one) => rename(one, from, to, under));
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).flatMap(([key, inner]) => {
    if (inner === undefined) return [];
    // What other tools keep under x- is theirs.
    if (key.startsWith('x-')) return [[key, inner]];
    const name = under !== null && TABLES.has(under) && key.startsWith(from) ? to + key.slice(from.length) : key;
    return [[name, rename(inner, from, to, key)]];
  });
  return Object.fromEntries(entries);
}
