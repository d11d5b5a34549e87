import { changeLayer, memberKeys, readLayers } from '../../src/keep/layers';
import { readText } from '../../src/keep/packs';
import type { KeptLayer } from '../../src/keep/schema';
import { contentHash } from '../../src/pack/compiled/content-hash';
import type { Pack } from '../../src/pack/schema/index';
import type { Question, Replies } from '../../src/session/engine-messages';
import { asChange, carriedTo, changesOf } from '../../src/session/own/changed-layer';
import { ownTold } from '../../src/session/own/editable';
import { issueWith } from '../../src/session/own/in-order';
import { writeProposal } from '../../src/sharing/propose/proposal';
import { withKeep } from './keep';

type Asked = Extract<Question, { about: 'own' | 'correction' | 'proposal' }>;

/**
 * What a user has changed of a pack and can change, what would be wrong with one more correction, or a signed proposal of
 * them; null where that pack is not here.
 */
export async function answerOwn(question: Asked): Promise<Replies[Asked['about']]> {
  const text = await withKeep((db) => readText(db, question.pack));
  const layers = await withKeep(readLayers);
  if (!text.ok || text.value === null || !layers.ok) return null;
  const hash = await contentHash(text.value);
  const pack = JSON.parse(text.value) as Pack;
  const { layer, cameBack } = await carried(layers.value.get(question.pack), pack, hash);
  const changes = layer ? changesOf(layer) : [];
  if (question.about === 'own') return { ...ownTold(pack, hash, changes, question.sought, question.chosen), cameBack };
  if (question.about === 'correction') return issueWith(pack, changes, asChange(question.typed));
  const keys = await withKeep((db) => memberKeys(db, newKeys));
  if (!keys.ok || changes.length === 0) return null;
  const { name, note } = question;
  const base = { edition: pack.about.edition, hash };
  return writeProposal({ pack: question.pack, base, author: { name }, note, changes }, keys.value);
}

/** The layer on the edition that is here: what that has taken up is the pack's word now, and no correction any more. */
async function carried(layer: KeptLayer | undefined, pack: Pack, hash: string) {
  if (!layer || layer.base.hash === hash) return { layer, cameBack: 0 };
  const over = carriedTo(layer, { pack, hash });
  // Unless another window has changed it meanwhile: then it is carried over the next time.
  const same = (there: KeptLayer) => JSON.stringify(there) === JSON.stringify(layer);
  const kept = await withKeep((db) => changeLayer(db, layer.id, (there) => (same(there) ? over.layer : null)));
  return kept.ok && kept.value ? over : { layer, cameBack: 0 };
}

/** Made silently: it says no more than that two proposals are of one hand, and can't be had out of this browser. */
function newKeys(): Promise<CryptoKeyPair> {
  return crypto.subtle.generateKey('Ed25519', false, ['sign', 'verify']) as Promise<CryptoKeyPair>;
}
