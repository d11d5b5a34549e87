import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Driven } from '../../src/cli/demo/driven';
import { contentHash } from '../../src/pack/compiled/content-hash';
import type { Pack } from '../../src/pack/schema/index';
import { openAnswer } from '../../src/sharing/propose/answer';
import type { Change } from '../../src/sharing/propose/changes';
import { writeProposal } from '../../src/sharing/propose/proposal';
import { keyOfBackup, restoreKeys } from '../../src/sharing/seal/keys';
import { openSealed } from '../../src/sharing/seal/open-seal';
import { readNotice } from '../../src/sharing/subscribe/notice';
import { keeperTexts as texts } from '../../src/text/catalogue/keeper';
import { folderOf, ourRequests, seenErrors } from './hands';
import { isAccessibleAtBothWidths } from './support/at-both-widths';
import { openTestedRoom, type Room } from './support/browser';
import { type OwnPage, ownPage } from './support/page';

// A keeper's desk: two members' proposals beside the pack, one conflict, an edition sealed with a key made for it, and
// another one after that. What comes out is opened by the same code as anybody's.

const text = readFileSync('fixtures/packs/grindlewade-circle.json', 'utf8');
const demo = JSON.parse(text) as Pack;
const model = demo.models![0]!;
const PASSPHRASE = 'a shuttle in a drawer';
const field = (name: string, was: unknown, now: unknown): Change =>
  ({ do: 'change', part: 'models', entry: model.id, field: [name], was, now }) as Change;
const member = async (name: string, pack: string, base: { edition: number; hash: string }, changes: Change[]) => {
  const keys = (await crypto.subtle.generateKey('Ed25519', true, ['sign', 'verify'])) as CryptoKeyPair;
  return writeProposal({ pack, base, author: { name }, note: `So says ${name}.`, changes }, keys);
};
const base = { edition: demo.about.edition, hash: await contentHash(text) };
const files = folderOf({
  'pack.json': text,
  'one.proposal': await member('Member One', demo.about.id, base, [
    field('number', model.number, 7),
    field('label', model.label, 'Called otherwise'),
  ]),
  'two.proposal': await member('Member Two', demo.about.id, base, [field('number', model.number, 8)]),
  'stranger.proposal': 'no proposal',
});

let room: Room<Driven>;
let bench: OwnPage;
let id = demo.about.id;
beforeAll(async () => {
  room = await openTestedRoom({ packs: false });
  bench = ownPage(await room.browser.openTab(room.browser.addressOf('workbench.html')));
  await bench.choose('[data-part="pack-file"]', `${files}/pack.json`);
  await bench.shows(row());
});
afterAll(() => room?.close());

const part = (name: string) => `[data-part="${name}"]`;
const row = () => `[data-pack-id="${id}"]`;
const place = (name: string) => `[data-slot*='"${name}"']`;

interface Desk {
  published: { edition: number; files: { name: string; text: string }[] } | null;
}
function deskOf(pack: string): Promise<Desk | null> {
  return bench.tab.evaluate(async (sought: string) => {
    const db = await new Promise<IDBDatabase>((resolve) => {
      const opening = indexedDB.open('bedplate');
      opening.onsuccess = () => resolve(opening.result);
    });
    const desk = await new Promise<unknown>((resolve) => {
      const asking = db.transaction('desks').objectStore('desks').get(sought);
      asking.onsuccess = () => resolve(asking.result);
    });
    db.close();
    return (desk ?? null) as Desk | null;
  }, pack);
}
const published = async (end: string) =>
  (await deskOf(id))?.published?.files.find(({ name }) => name.endsWith(end))?.text ?? '';

it('proposals stand beside the pack, conflicts together, and files that are none are told', async () => {
  await bench.click(`${row()} ${part('keeper-open')}`);
  await bench.shows(part('publish'));
  await bench.choose(part('proposal-files'), ...['one', 'two', 'stranger'].map((name) => `${files}/${name}.proposal`));
  await bench.shows(part('keeper'), 'So says Member Two.');
  await bench.shows(part('keeper'), texts.strangers(1));
  expect(await bench.attribute(place('label'), 'data-state')).toBe('open');
  expect(await bench.attribute(place('number'), 'data-state')).toBe('conflict');
  expect(await bench.text(place('number'))).toContain('The pack says: 142000');
  expect(await bench.text(place('number'))).toContain('Member Two: 8');
});

isAccessibleAtBothWidths('keeper', () => bench);

it('what is decided is kept at once; declining takes a reason', async () => {
  await bench.click(part('accept-all'));
  await bench.shows(`${place('label')}[data-decided="accept"]`);
  await bench.click(`${place('number')} ${part('decline')}`);
  await bench.shows(place('number'), texts.needsReason);
  await bench.click(`${place('number')} ${part('accept')}`, '8');
  await bench.shows(`${place('number')}[data-decided="accept"]`);
  await bench.reload();
  await bench.click(`${row()} ${part('keeper-open')}`);
  await bench.shows(`${place('number')}[data-decided="accept"]`);
  await bench.shows(`${place('label')}[data-decided="accept"]`);
});

it('the first edition is sealed with a key made for it, whose backup opens by the passphrase', async () => {
  await bench.fill('#passphrase', 'short');
  await bench.click(part('publish-make'));
  await bench.shows(part('publish'), texts.problems.passphrase);
  await bench.fill('#passphrase', PASSPHRASE);
  await bench.click(part('publish-make'));
  await bench.shows(part('published'));
  id = String(await bench.attribute(`${part('published')}`, 'data-pack'));
  await bench.shows(row(), 'sealed by');
  expect(await bench.count(`[data-pack-id="${demo.about.id}"]`)).toBe(0);
  const opened = await openSealed(await published('.pack'));
  if (opened.issues) throw new Error('not opened');
  expect(opened.pack.about).toMatchObject({ id, edition: demo.about.edition + 1 });
  expect(opened.pack.models?.[0]).toMatchObject({ label: 'Called otherwise' });
  expect([7, 8]).toContain(opened.pack.models?.[0]?.number);
  const backup = await published('.key-backup.json');
  expect(keyOfBackup(backup)).toBe(opened.key);
  expect(await restoreKeys(backup, PASSPHRASE)).not.toHaveProperty('problem');
  expect(readNotice(await published('.notice.json'))).toMatchObject({ pack: id, edition: opened.edition });
  expect((await openAnswer(await published('One.answer'), opened.key))?.changes).toHaveLength(2);
});

it('the next one is sealed by the same key, with another value than was proposed, and a small update', async () => {
  const before = await openSealed(await published('.pack'));
  if (before.issues) throw new Error('not opened');
  const proposal = await member('Member Three', id, { edition: before.edition, hash: before.hash }, [
    field('label', 'Called otherwise', 'A third name'),
  ]);
  const another = await member('Member Four', id, { edition: before.edition, hash: before.hash }, [
    field('label', 'Called otherwise', 'A fourth name'),
  ]);
  const more = folderOf({ 'three.proposal': proposal, 'four.proposal': another });
  await bench.choose(part('proposal-files'), `${more}/three.proposal`);
  await bench.fill(`${place('label')} ${part('reason')}`, 'As the works called it.');
  await bench.fill(`${place('label')} ${part('other-value')}`, 'The works’ own name');
  await bench.click(`${place('label')} ${part('edit')}`);
  await bench.shows(`${place('label')}[data-decided="edit"]`);
  // What was decided was about the one name alone.
  await bench.choose(part('proposal-files'), `${more}/four.proposal`);
  await bench.shows(`${place('label')}[data-decided="no"] ${part('lapsed')}`);
  await bench.click(`${place('label')} ${part('edit')}`);
  await bench.shows(`${place('label')}[data-decided="edit"]`);
  expect(await bench.count(part('lapsed'))).toBe(0);
  await bench.click(part('publish-make'));
  await bench.shows(part('published'), texts.made(before.edition + 1));
  const opened = await openSealed(await published('.pack'));
  if (opened.issues) throw new Error('not opened');
  expect([opened.key, opened.edition]).toEqual([before.key, before.edition + 1]);
  expect(opened.previous).toEqual({ edition: before.edition, hash: before.hash });
  expect(opened.pack.models?.[0]?.label).toBe('The works’ own name');
  expect(await published('.changes')).not.toBe('');
  expect((await openAnswer(await published('.answer'), opened.key))?.changes).toMatchObject([
    { outcome: 'edited', reason: 'As the works called it.' },
  ]);
});

it('none of this made a request or an error', async () => {
  expect(ourRequests(room.browser)).toEqual([]);
  expect(await seenErrors(room.browser)).toEqual([]);
});
