import type { Page } from 'playwright-core';
import { contentHash } from '../../../src/pack/compiled/content-hash';
import type { Change } from '../../../src/sharing/propose/changes';
import { writeProposal } from '../../../src/sharing/propose/proposal';
import { folderOf } from '../hands';
import { growingPack } from './growing-pack';
import { keptRecords } from './kept-records';

// What a keeper does at a desk before the moment that a test is about, and members before that.

export const PASSPHRASE = 'a shuttle in a drawer';
/** How many members propose something each time. */
export const MEMBERS = 2;

export const part = (name: string) => `[data-part="${name}"]`;
export const rowOf = (page: Page, id: string) => page.locator(`[data-pack-id="${id}"]`);

/** Members' keys: who proposes stays the same. */
const members = await Promise.all(
  Array.from(
    { length: MEMBERS },
    () => crypto.subtle.generateKey('Ed25519', true, ['sign', 'verify']) as Promise<CryptoKeyPair>,
  ),
);

/** Puts an unsealed pack on the shelf. */
export async function installed(bench: Page, id: string, runs: number): Promise<void> {
  const files = folderOf({ 'pack.json': JSON.stringify(growingPack(id, 1, runs)) });
  await bench.locator(part('pack-file')).setInputFiles(`${files}/pack.json`);
  await rowOf(bench, id).waitFor();
}

/** Proposals to the pack as it stands here, one for its model's name and one for its number: paths of files. */
export async function proposed(bench: Page, pack: string, turn: number): Promise<string[]> {
  const { texts, packs } = await keptRecords(bench);
  const text = String(texts?.[pack]?.text);
  const [model] = JSON.parse(text).models;
  const base = { edition: Number(packs?.[pack]?.edition), hash: await contentHash(text) };
  const field = (name: string, now: unknown) =>
    ({ do: 'change', part: 'models', entry: 'plain', field: [name], was: model[name], now }) as Change;
  const changes = [field('label', `Called ${turn}`), field('number', model.number + 1)];
  const written = members.map(async (keys, at) => {
    const author = { name: `Member ${at + 1}` };
    return writeProposal({ pack, base, author, note: '', changes: [changes[at]!] }, keys);
  });
  const files = Object.fromEntries((await Promise.all(written)).map((each, at) => [`${at}.proposal`, each]));
  const folder = folderOf(files);
  return Object.keys(files).map((name) => `${folder}/${name}`);
}

export async function atDesk(bench: Page, id: string): Promise<void> {
  await rowOf(bench, id).locator(part('keeper-open')).click();
  await bench.locator(part('publish')).waitFor();
}

export const bring = (bench: Page, files: string[]) => bench.locator(part('proposal-files')).setInputFiles(files);

/** Waits until so many places show that they are decided, or open. */
export async function showsRows(bench: Page, decided: 'accept' | 'no'): Promise<void> {
  await bench
    .locator(`${part('keeper')} [data-slot][data-decided="${decided}"]`)
    .nth(MEMBERS - 1)
    .waitFor();
}

/** A desk with proposals, all of them decided where that is wanted; whatever of that stands there already is left. */
export async function deskWith(bench: Page, id: string, turn: number, isDecided: boolean): Promise<void> {
  const desk = (await keptRecords(bench)).desks?.[id] as { proposals: []; decisions: [] } | undefined;
  await atDesk(bench, id);
  if (!desk?.proposals.length) {
    await bring(bench, await proposed(bench, id, turn));
    await showsRows(bench, 'no');
  }
  if (!isDecided || desk?.decisions.length) return;
  await bench.locator(part('accept-all')).click();
  await showsRows(bench, 'accept');
}
