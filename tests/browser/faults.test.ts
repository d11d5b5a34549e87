import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Driven, Tab } from '../../src/cli/demo/driven';
import { workbenchTexts as texts } from '../../src/text/catalogue/workbench';
import { folderOf, ourRequests, seenErrors, until } from './hands';
import { openTestedRoom, type Room } from './support/browser';

// What can happen to storage under an open page, in both browsers: a plain message, and nothing lost.

const text = readFileSync('fixtures/packs/grindlewade-circle.json', 'utf8');
const ID = JSON.parse(text).about.id as string;
const EDITION = JSON.parse(text).about.edition as number;
const files = folderOf({ 'sound.json': text });

let room: Room<Driven>;
beforeAll(async () => {
  room = await openTestedRoom({ packs: false });
});
afterAll(() => room?.close());

const openBench = () => room.browser.openTab(room.browser.addressOf('workbench.html'));

function count(tab: Tab, selector: string): Promise<number> {
  return tab.evaluate((sought: string) => document.querySelectorAll(sought).length, selector);
}

function shows(tab: Tab, selector: string, words = ''): Promise<void> {
  const says = () =>
    tab.evaluate(
      ([sought, said]: string[]) =>
        document.querySelector(sought as string)?.textContent?.includes(said as string) === true,
      [selector, words],
    );
  // Longer than an opening waits that hears nothing.
  return until(`${selector} says ${words}`, says, 30_000);
}

const PACK = `[data-pack-id="${ID}"]`;
const TROUBLE = '[data-part="trouble"]';

/**
 * In a page of ours: throws the whole database away. A page that gives way may still have to end what it reads: so long
 * the browser calls it blocked, and deletes it then.
 */
function deleteAll(): Promise<string> {
  return new Promise((resolve) => {
    const deleting = indexedDB.deleteDatabase('bedplate');
    deleting.onsuccess = () => resolve('deleted');
    deleting.onerror = () => resolve(String(deleting.error));
    deleting.onblocked = () => setTimeout(() => resolve('blocked'), 10_000);
  });
}

describe('the database is deleted under an open page', () => {
  it('says that packs are gone, goes on with those that came with the program, and takes others again', async () => {
    const bench = await openBench();
    await shows(bench, '[data-pack-id="trade"]');
    await bench.setInputFiles('[data-part="pack-file"]', `${files}/sound.json`);
    await shows(bench, PACK);
    expect(await bench.evaluate(deleteAll)).toBe('deleted');
    await bench.click('[data-pack-id="trade"] input[type="checkbox"]');
    await shows(bench, TROUBLE, texts.troubles.gone);
    expect(await count(bench, PACK)).toBe(0);
    await bench.click('[data-pack-id="trade"] input[type="checkbox"]');
    await bench.setInputFiles('[data-part="pack-file"]', `${files}/sound.json`);
    await shows(bench, PACK);
    await bench.close();
  });
});

describe('a page from before an update still holds the database', () => {
  it('says so; once that page is closed, all that it kept is there', async () => {
    const old = await openBench();
    await shows(old, PACK);
    // As the first version of the database was, with a pack in it, held open by a page that doesn't give way. What that
    // page still keeps of its packs may open the database anew in between: then it is deleted once more.
    const hold = () =>
      old.evaluate(
        ([id, edition, pack]: [string, number, string]) =>
          new Promise((resolve) => {
            const opening = indexedDB.open('bedplate', 1);
            opening.onerror = () => resolve(String(opening.error));
            opening.onupgradeneeded = () => {
              const db = opening.result;
              db.createObjectStore('packs', { keyPath: 'id' });
              db.createObjectStore('switches', { keyPath: 'id' });
              db.createObjectStore('drafts', { keyPath: 'id' }).createIndex('changedAt', 'changedAt');
              db.createObjectStore('audits', { keyPath: 'id' }).createIndex('asOf', 'asOf');
              db.createObjectStore('answers', { keyPath: ['about', 'attribute'] }).createIndex('about', 'about');
              db.createObjectStore('observations', { keyPath: 'id' }).createIndex('model', 'model');
            };
            opening.onsuccess = () => {
              const work = opening.result.transaction(['packs', 'drafts'], 'readwrite');
              const at = '2026-06-01T10:00:00.000Z';
              work.objectStore('packs').put({ id, edition, text: pack, installedAt: at });
              work.objectStore('drafts').put({ id: 'd', draft: { title: 'A draft from before' }, changedAt: at });
              work.oncomplete = () => {
                Object.assign(globalThis, { held: opening.result });
                resolve('held');
              };
            };
          }),
        [ID, EDITION, text] as [string, number, string],
      );
    await until('the first version is held open', async () => {
      expect(await old.evaluate(deleteAll)).toBe('deleted');
      return (await hold()) === 'held';
    });
    const bench = await openBench();
    await shows(bench, TROUBLE, texts.troubles.blocked);
    await old.close();
    await bench.reload();
    await shows(bench, PACK);
    expect(await count(bench, TROUBLE)).toBe(0);
    await bench.click('[data-part="to-drafts"]');
    await shows(bench, '.shelf', 'A draft from before');
    await bench.close();
  });
});

describe('what was made of packs is damaged under us', () => {
  // The first is seen when it is read, the second only when something is asked of it.
  it.each(['first', 'rest'])('in its %s bytes: it is made anew, and answers as before', async (where) => {
    const bench = await openBench();
    await shows(bench, PACK);
    expect(await bench.evaluate(damageMade, where)).toBe(2);
    await bench.reload();
    await shows(bench, PACK);
    await bench.click('[data-part="to-enquiry"]');
    await bench.click('#enquiry-serial');
    await bench.keyboard.type('103001');
    await bench.keyboard.press('Enter');
    await shows(bench, '[data-part="enquiry"][data-verdict="found"]', '103001');
    expect(await count(bench, TROUBLE)).toBe(0);
    await bench.close();
  });
});

/** Puts other bytes in the place of those that were made of packs. @returns of how many packs */
function damageMade(where: string): Promise<number> {
  const blank = (file: Blob | null) => file && new Blob([new Uint8Array(file.size)]);
  return new Promise((resolve) => {
    const opening = indexedDB.open('bedplate');
    opening.onsuccess = () => {
      const work = opening.result.transaction('compiled', 'readwrite');
      const compiled = work.objectStore('compiled');
      const all = compiled.getAll();
      all.onsuccess = () => {
        for (const one of all.result)
          compiled.put(
            where === 'first'
              ? { ...one, first: one.first.slice(0, 1000) }
              : { ...one, often: blank(one.often), rest: blank(one.rest) },
          );
      };
      work.oncomplete = () => {
        opening.result.close();
        resolve(all.result.length);
      };
    };
  });
}

it('none of this made a request, or an error other than those that it was to make', async () => {
  expect(ourRequests(room.browser)).toEqual([]);
  expect(await seenErrors(room.browser)).toEqual([]);
});
