import 'fake-indexeddb/auto';
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { changeLayer, memberKeys, readLayers } from '../../../src/keep/layers';
import { openKeep } from '../../../src/keep/open';
import type { Pack } from '../../../src/pack/schema/index';
import { withChange } from '../../../src/session/own/changed-layer';

const demo = JSON.parse(readFileSync('fixtures/packs/grindlewade-circle.json', 'utf8')) as Pack;
const model = demo.models![0]!;
const BASE = { edition: demo.about.edition, hash: 'h' };
const typed = { part: 'models', entry: model.id, field: ['number'], saw: model.number!, now: 7 };

it('written by two windows loses no word of either, and says where both wrote in one field', async () => {
  const keep = await openKeep('own-layer');
  if (!keep.ok) throw new Error(keep.trouble);
  const db = keep.value;
  const { id } = demo.about;
  const label = { part: 'models', entry: model.id, field: ['label'], saw: model.label, now: 'Another' };
  await Promise.all([
    changeLayer(db, id, (layer) => withChange(layer, typed, BASE)),
    changeLayer(db, id, (layer) => withChange(layer, label, BASE)),
  ]);
  const late = await changeLayer(db, id, (layer) => withChange(layer, { ...typed, now: 9 }, BASE));
  expect(late).toEqual({ ok: true, value: null });
  const read = await readLayers(db);
  expect(read.ok && read.value.get(id)?.changes).toHaveLength(2);
  await changeLayer(db, id, (layer) => ({ ...layer, changes: [] }));
  const gone = await readLayers(db);
  expect(gone.ok && gone.value.size).toBe(0);
  db.close();
});

it('the key that signs proposals is made once, and can’t be had out', async () => {
  const keep = await openKeep('own-keys');
  if (!keep.ok) throw new Error(keep.trouble);
  let made = 0;
  const make = async () => {
    made += 1;
    return (await crypto.subtle.generateKey('Ed25519', false, ['sign', 'verify'])) as CryptoKeyPair;
  };
  const first = await memberKeys(keep.value, make);
  const second = await memberKeys(keep.value, make);
  expect([first.ok, second.ok, made]).toEqual([true, true, 1]);
  await expect(
    crypto.subtle.exportKey('pkcs8', (first as { value: CryptoKeyPair }).value.privateKey),
  ).rejects.toThrow();
  keep.value.close();
});
