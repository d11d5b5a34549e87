import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Driven } from '../../src/cli/demo/driven';
import { changeKey } from '../../src/sharing/seal/key-change';
import { founded, sealPack } from '../../src/sharing/seal/seal';
import { folderOf, ourRequests, press, seenErrors, until, waitForScreen } from './hands';
import { openTestedRoom, type Room } from './support/browser';
import { type OwnPage, ownPage } from './support/page';

const sound = JSON.parse(readFileSync('fixtures/packs/grindlewade-circle.json', 'utf8'));
const shipped = JSON.parse(readFileSync('src/pack/shipped/trade.json', 'utf8'));
const ID = sound.about.id as string;
const newKeys = () => crypto.subtle.generateKey('Ed25519', true, ['sign', 'verify']) as Promise<CryptoKeyPair>;
const keys = await newKeys();
const next = await newKeys();
const own = await founded(sound, keys);
/** A sealed pack has an id of its own, in which its key's fingerprint stands. */
const OWN = `[data-pack-id="${own.about.id}"]`;
const at = (edition: number, licence = own.about.licence) => ({ ...own, about: { ...own.about, edition, licence } });
const sealed = await sealPack(at(2), keys);
const handover = await changeKey(own.about.id, 4, keys, next);
const files = folderOf({
  'sealed.pack': sealed,
  'tampered.pack': sealed.replace(sound.about.licence, 'CC0-9.9'),
  'unsealed.json': JSON.stringify(at(3)),
  'fork.pack': await sealPack(at(2, 'CC0-9.9'), keys),
  'later.pack': await sealPack(at(3), keys),
  'handed-over.pack': await sealPack(at(4), next, { history: [handover] }),
  'taken-back.pack': await sealPack(at(5), keys),
  'other.json': JSON.stringify({ ...sound, about: { ...sound.about, id: 'another-circle' } }),
  'sound.json': JSON.stringify(sound),
  'newer.json': JSON.stringify({ ...sound, about: { ...sound.about, edition: sound.about.edition + 1 } }),
  'bad.json': JSON.stringify({ ...sound, about: { ...sound.about, edition: 'first' }, models: [{ id: 'A B' }] }),
  'no-json.json': '{"schema": 1,',
  'prototype.json': '{"schema":1,"__proto__":{"polluted":1}}',
  'binary.json': new Uint8Array([0xff, 0xfe, 0x00, 0xd8]),
  'stranger.json': JSON.stringify({ ...shipped, about: { ...shipped.about, edition: shipped.about.edition + 1 } }),
});

let room: Room<Driven>;
let bench: OwnPage;
beforeAll(async () => {
  room = await openTestedRoom({ packs: false });
  bench = ownPage(await room.browser.openTab(room.browser.addressOf('workbench.html')));
});
afterAll(() => room?.close());

const ids = (): Promise<string[]> =>
  bench.tab.evaluate(`[...document.querySelectorAll('[data-pack-id]')].map((row) => row.dataset.packId)`);
const choose = (...names: string[]) =>
  bench.choose('[data-part="pack-file"]', ...names.map((name) => `${files}/${name}`));
const refused = (name: string) => bench.shows('[data-part="refused-file"]', name);
const OUTCOME = '[data-part="install-outcome"] p';
const OURS = `[data-pack-id="${ID}"]`;

it('lists the pack that came with the program', async () => {
  await bench.shows('[data-pack-id]');
  expect(await ids()).toEqual(['trade']);
  expect(await bench.count('[data-pack-id="trade"] [data-part="remove"]')).toBe(0);
});

it.each([
  ['bad.json', ['about.edition', 'models[0].id']],
  ['no-json.json', []],
  ['prototype.json', []],
  ['binary.json', []],
  ['stranger.json', ['about.id']],
])('installs nothing of %s and lists its issues', async (name, paths) => {
  await choose(name);
  await refused(name);
  const listed = await bench.texts('[data-part="issue-path"]');
  for (const path of paths) expect(listed).toContain(path);
  expect(await bench.count('[data-part="issue"]')).toBeGreaterThan(0);
  expect(await ids()).toEqual(['trade']);
});

it('installs nothing where one of two files is bad', async () => {
  await choose('sound.json', 'bad.json');
  await refused('bad.json');
  expect(await ids()).toEqual(['trade']);
});

it('installs a sound pack, keeps it over a reload, and takes a newer edition', async () => {
  await choose('sound.json');
  await bench.shows(OURS);
  await bench.reload();
  await bench.shows(OURS);
  await choose('newer.json');
  await bench.shows(OUTCOME, String(sound.about.edition + 1));
});

it('goes back to an earlier edition only where that is meant', async () => {
  const { edition } = sound.about;
  await choose('sound.json');
  await bench.shows('[data-part="going-back"]', `edition ${edition + 1}`);
  await bench.click('[data-part="leave-it"]');
  await bench.lacks('[data-part="going-back"]');
  expect(await bench.text(`${OURS} .labels`)).toContain(`edition ${edition + 1}`);
  await choose('sound.json');
  await bench.click('[data-part="go-back"]');
  await bench.shows(OUTCOME, `edition ${edition} in place of ${edition + 1}`);
  expect(await ids()).toEqual(['trade', ID]);
});

it('tells an open panel at once when packs are switched, removed and put back', async () => {
  const page = await room.browser.openTab(room.market.addressOf('wendelow-industrial-zigzag/page.html'));
  const panel = await press(room.browser, page, 'audit');
  const SPOKE = `[...document.querySelectorAll('[data-part="packs"] [data-pack-id]')].map((row) => row.dataset.packId).join()`;
  expect(await panel.evaluate(SPOKE)).toBe(`trade,${ID}`);
  const change = async (selector: string, speaking: string[]) => {
    // By script: the workbench stands behind the advert, whose panel is looked at.
    await bench.tab.evaluate(`document.querySelector(${JSON.stringify(selector)}).click()`);
    if (speaking.length === 0) await waitForScreen(panel, 'no-pack');
    else await panel.waitFor(`${SPOKE} === '${speaking.join()}'`);
  };
  await change('[data-pack-id="trade"] input[type="checkbox"]', [ID]);
  await change(`${OURS} [data-part="remove"]`, []);
  await until('the way back', async () => (await bench.count('[data-part="undo"]')) === 1);
  await change('[data-part="undo"]', [ID]);
  await change('[data-pack-id="trade"] input[type="checkbox"]', ['trade', ID]);
  await page.close();
});

it('takes a dropped file as well', async () => {
  await bench.tab.bringToFront();
  await bench.click(`${OURS} [data-part="remove"]`);
  await bench.lacks(OURS);
  await bench.tab.evaluate((text: string) => {
    const dataTransfer = new DataTransfer();
    dataTransfer.items.add(new File([text], 'dropped.json', { type: 'application/json' }));
    const drop = new DragEvent('drop', { dataTransfer, bubbles: true, cancelable: true });
    document.querySelector('[data-part="drop"]')?.dispatchEvent(drop);
  }, JSON.stringify(sound));
  await bench.shows(OURS);
});

it('opens from the panel’s link', async () => {
  const page = await room.browser.openTab(room.market.addressOf('wendelow-industrial-zigzag/page.html'));
  const panel = await press(room.browser, page, 'audit');
  const link = '[data-part="packs-link"]';
  const address = String(await panel.evaluate(`document.querySelector('${link}').href`));
  await panel.click(link);
  const opened = ownPage(await room.browser.tabAt(address));
  await opened.shows('[data-pack-id="trade"]');
  await opened.tab.close();
  await page.close();
});

describe('a sealed pack', () => {
  const labels = () => bench.text(`${OWN} .labels`);

  it('is taken with its key, which is said; a damaged one isn’t', async () => {
    await bench.tab.bringToFront();
    await choose('tampered.pack');
    await refused('tampered.pack');
    await choose('sealed.pack');
    await bench.shows(OWN, 'edition 2');
    expect(await labels()).toMatch(/sealed by (\d{4} ){9}\d{4}/);
    expect(await labels()).not.toContain('unsealed');
  });

  it.each([
    ['unsealed.json', 'an unsealed one'],
    ['fork.pack', 'another text under its number'],
  ])('gives way to no %s: %s', async (name) => {
    await choose(name);
    await refused(name);
    expect(await labels()).toContain('edition 2');
  });

  it('that was removed is remembered: what comes under its id is held against that', async () => {
    await choose('later.pack');
    await bench.shows(OWN, 'edition 3');
    await bench.click(`${OWN} [data-part="remove"]`);
    await bench.lacks(OWN);
    await choose('sealed.pack');
    await bench.shows('[data-part="going-back"]', 'edition 3');
    await bench.click('[data-part="go-back"]');
    await bench.shows(OWN, 'edition 2');
  });

  it('follows a change of keys that both have signed, says so, and takes none of the old key’s any more', async () => {
    await choose('handed-over.pack');
    await bench.shows('[data-part="handed-over"]', 'both keys have signed');
    await bench.shows(OWN, 'edition 4');
    await choose('taken-back.pack');
    await refused('taken-back.pack');
    expect(await labels()).toContain('edition 4');
  });
});

it('none of this made a request or an error', async () => {
  expect(ourRequests(room.browser)).toEqual([]);
  expect(await seenErrors(room.browser)).toEqual([]);
});
