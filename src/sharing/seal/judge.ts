import type { KeyChange } from './key-change';
import { keyHash } from './key-hash';
import type { OpenedSeal } from './open-seal';
import { splitId } from './pack-id';

/*
 * Promises: given what this reader knew of a pack and a file whose seal is sound, says whether the file may take its
 * place, and what to remember from then on. The seal proves who wrote; this proves that it is still the same keeper, that
 * nothing older is passed off as news, and that not two different packs go round under one edition's number. Decides by
 * what it is given alone: no clock, no storage.
 */

/** What a reader remembers of a sealed pack, beside the pack itself. */
export interface KnownPack {
  id: string;
  /** The pinned key: the one that sealed the highest edition seen; raw, base64url. */
  key: string;
  /** The highest edition seen, and the hash of its bytes. */
  edition: number;
  hash: string;
  /** The hash of the only key to which the pinned one may be changed; null: none was committed to. */
  next: string | null;
  /** Keys that were pinned before, oldest first. */
  earlier: string[];
}

export type Verdict =
  /** never seen before: its key is pinned from now on */
  | 'first'
  /** the very edition that is known */
  | 'same'
  /** a later edition by the pinned key */
  | 'newer'
  /** a later edition by a key to which the pinned one was changed, signed by both */
  | 'key-changed'
  /** an earlier edition than was seen already: an old file, or somebody who holds back news */
  | 'rollback'
  /** two packs under one edition, or two keys for one edition: keepers who don't know of each other, or a stolen key */
  | 'fork'
  | 'refused';

export type RefusalReason =
  /** no seal, where the id belongs to a sealed pack */
  | 'unsealed'
  /** another pack's file */
  | 'another-pack'
  /** a key to which nobody has handed the pinned one over */
  | 'another-key'
  /** handed over to another key than the one that was committed to */
  | 'not-the-next-key'
  /** the same key, but the key that was to come next is left out or another one */
  | 'next-changed';

export interface Judgement {
  verdict: Verdict;
  /** May the file be used from now on? True for first, same, newer and key-changed. */
  accepted: boolean;
  reason: RefusalReason | null;
  /** Key changes since the pinned key, oldest first. */
  changes: KeyChange[];
  /** What to remember from now on; what was known where the file isn't accepted. */
  remember: KnownPack | null;
}

/** What of an opened file decides. */
export type Judged = Pick<OpenedSeal, 'key' | 'edition' | 'hash' | 'history' | 'next' | 'previous'> & {
  pack: { about: { id: string } };
};

/** An unsealed file, against what was known of a sealed pack of its id: refused. Unsealed never takes a seal's place. */
export function judgeUnsealed(known: KnownPack | null, id: string): Judgement {
  // An id with a fingerprint belongs to whoever has the key, also where the reader has never seen the pack.
  const refused = known?.id === id || splitId(id).founder !== null;
  const [verdict, reason] = refused ? (['refused', 'unsealed'] as const) : (['first', null] as const);
  return { verdict, accepted: !refused, reason, changes: [], remember: known };
}

/** May this sealed file take the place of what was known (null: nothing)? */
export async function judge(known: KnownPack | null, opened: Judged): Promise<Judgement> {
  const { key, edition, hash, next } = opened;
  const remember: KnownPack = { id: opened.pack.about.id, key, edition, hash, next, earlier: known?.earlier ?? [] };
  if (!known) return { verdict: 'first', accepted: true, reason: null, changes: [], remember };
  const not = (verdict: Verdict, reason: RefusalReason | null = null, changes: KeyChange[] = []): Judgement => {
    return { verdict, accepted: false, reason, changes, remember: known };
  };
  if (known.id !== remember.id) return not('refused', 'another-pack');
  const changes = changesSince(known.key, opened);
  if (!changes && known.earlier.includes(key)) return not(edition < known.edition ? 'rollback' : 'fork');
  if (!changes) return not('refused', 'another-key');
  const [change] = changes;
  // The pinned key went on sealing editions that the other one had taken over.
  if (change && change.edition <= known.edition) return not('fork', null, changes);
  if (change && known.next !== null && (await keyHash(change.key)) !== known.next)
    return not('refused', 'not-the-next-key', changes);
  if (edition < known.edition) return not('rollback');
  if (edition === known.edition && hash !== known.hash) return not('fork');
  // A keeper who has seen another edition of the number that is known here.
  if (opened.previous?.edition === known.edition && opened.previous.hash !== known.hash) return not('fork');
  if (!change && known.next !== null && next !== known.next) return not('refused', 'next-changed');
  if (edition === known.edition) return { verdict: 'same', accepted: true, reason: null, changes, remember };
  if (!change) return { verdict: 'newer', accepted: true, reason: null, changes, remember };
  remember.earlier = [...known.earlier, ...changes.map(({ from }) => from)];
  return { verdict: 'key-changed', accepted: true, reason: null, changes, remember };
}

/** The key changes after this key was the pack's, oldest first; null where it never was. */
function changesSince(key: string, { key: present, history }: Judged): KeyChange[] | null {
  if (key === present) return [];
  const at = history.findIndex((change) => change.from === key);
  return at < 0 ? null : history.slice(at);
}
