import { readFileSync } from 'node:fs';
import type { Tab } from '../../../src/cli/demo/driven';
import type { Pack } from '../../../src/pack/schema/index';
import { founded, sealPack } from '../../../src/sharing/seal/seal';
import { publication } from '../../../src/sharing/subscribe/publication';
import { until } from '../hands';

/** A club that publishes one demo pack in editions; each calls the first model otherwise. */
export async function followedClub() {
  const demo = JSON.parse(readFileSync('fixtures/packs/grindlewade-circle.json', 'utf8')) as Pack;
  const keys = (await crypto.subtle.generateKey('Ed25519', true, ['sign', 'verify'])) as CryptoKeyPair;
  const own = await founded(demo, keys);
  const edition = (number: number): Pack => {
    const [model, ...models] = own.models!;
    const label = number === 1 ? model!.label : `Called ${number}`;
    return { ...own, about: { ...own.about, edition: number }, models: [{ ...model!, label }, ...models] };
  };
  const sealed = (number: number, expires: string | null = null) => sealPack(edition(number), keys, { expires });
  return {
    id: own.about.id,
    keys,
    edition,
    sealed,
    notice: 'grindlewade-circle.notice.json',
    /** The files of an edition, by name. */
    async published(number: number, expires: string | null = null): Promise<Record<string, string>> {
      const files = await publication(await sealed(number, expires), number > 1 ? [edition(number - 1)] : []);
      return Object.fromEntries(files.map(({ name, text }) => [name, text]));
    },
  };
}

// What only one of our own pages can see or do of what is followed, done there.

/** The extension's interface, as our pages have it in either browser. */
type Extension = typeof import('wxt/browser').browser;

const WORK = {
  removeLeave: (api: Extension) => api.permissions.remove({ origins: ['https://127.0.0.1/*'] }),
  hasLeave: (api: Extension) => api.permissions.contains({ origins: ['https://127.0.0.1/*'] }),
  /** The alarm of the background, now. Of the same name, so that it takes the place of the usual one. */
  ring: (api: Extension) => api.alarms.create('packs', { when: Date.now() }),
  hasRung: async (api: Extension) => (await api.alarms.get('packs')) === undefined,
};

/** Does something with the extension's interface in one of its pages. */
export function inTab(tab: Tab, what: keyof typeof WORK): Promise<unknown> {
  return tab.evaluate(`(${WORK[what]})(globalThis.browser ?? globalThis.chrome)`);
}

/** Rings the alarm, and waits until the browser has told the background. */
export async function ringAlarm(tab: Tab): Promise<void> {
  await inTab(tab, 'ring');
  await until('the alarm', async () => Boolean(await inTab(tab, 'hasRung')));
}

export interface KeptNow {
  edition: number;
  /** The text is that of the hash that is noted. */
  isWhole: boolean;
  /** Why the last check failed, or null. */
  problem: string | null;
}

/** What is kept of a pack, or null. */
export function keptOf(tab: Tab, id: string): Promise<KeptNow | null> {
  return tab.evaluate(async (pack: string) => {
    const db = await new Promise<IDBDatabase>((resolve) => {
      const opening = indexedDB.open('bedplate');
      opening.onsuccess = () => resolve(opening.result);
    });
    const get = (store: string) =>
      new Promise<Record<string, unknown> | undefined>((resolve) => {
        const asking = db.transaction(store).objectStore(store).get(pack);
        asking.onsuccess = () => resolve(asking.result);
      });
    const [kept, text, followed] = [await get('packs'), await get('texts'), await get('subscriptions')];
    db.close();
    if (!kept) return null;
    const bytes = new TextEncoder().encode(String(text?.text));
    const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
    const hash = [...digest].map((byte) => byte.toString(16).padStart(2, '0')).join('');
    const finding = followed?.finding as { problem?: string } | undefined;
    return { edition: kept.edition as number, isWhole: hash === kept.hash, problem: finding?.problem ?? null };
  }, id);
}

/** From now on a check of that pack is due. */
export function makeDue(tab: Tab, id: string): Promise<void> {
  return tab.evaluate(async (pack: string) => {
    const db = await new Promise<IDBDatabase>((resolve) => {
      const opening = indexedDB.open('bedplate');
      opening.onsuccess = () => resolve(opening.result);
    });
    const work = db.transaction('subscriptions', 'readwrite');
    const store = work.objectStore('subscriptions');
    const asking = store.get(pack);
    asking.onsuccess = () => store.put({ ...asking.result, due: 0 });
    await new Promise((resolve) => {
      work.oncomplete = resolve;
    });
    db.close();
  }, id);
}
