import { Buffer } from 'node:buffer';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Driven } from '../../src/cli/demo/driven';
import { photoTexts as texts } from '../../src/text/catalogue/photos';
import { folderOf, ourRequests, seenErrors } from './hands';
import { expectAccessible, expectReadable, looksOfTab } from './support/accessible';
import { openTestedRoom, type Room } from './support/browser';
import { type OwnPage, ownPage } from './support/page';

// Own photos in the enquiry: what of a file is kept, and what is not.

const WHERE = 'Taken at 12 Harbour Street by camera 4711';

/** An Exif segment of a JPEG (Exif 2.3, 4.5.4 and 4.6.2): turned by a quarter, and a description. */
function exif(): Buffer {
  const text = Buffer.from(`${WHERE}\0`, 'latin1');
  const tiff = Buffer.alloc(8 + 2 + 2 * 12 + 4);
  tiff.write('MM\0*', 0, 'latin1');
  tiff.writeUInt32BE(8, 4);
  tiff.writeUInt16BE(2, 8);
  // ImageDescription, ASCII, behind the directory.
  tiff.writeUInt16BE(0x010e, 10);
  tiff.writeUInt16BE(2, 12);
  tiff.writeUInt32BE(text.length, 14);
  tiff.writeUInt32BE(tiff.length, 18);
  // Orientation, SHORT: 6, the camera was turned by a quarter.
  tiff.writeUInt16BE(0x0112, 22);
  tiff.writeUInt16BE(3, 24);
  tiff.writeUInt32BE(1, 26);
  tiff.writeUInt16BE(6, 30);
  const body = Buffer.concat([Buffer.from('Exif\0\0', 'latin1'), tiff, text]);
  const head = Buffer.alloc(4);
  head.writeUInt16BE(0xffe1, 0);
  head.writeUInt16BE(body.length + 2, 2);
  return Buffer.concat([head, body]);
}

let room: Room<Driven>;
let bench: OwnPage;
let folder: string;
beforeAll(async () => {
  room = await openTestedRoom();
  bench = ownPage(await room.browser.openTab(room.browser.addressOf('workbench.html#enquiry')));
  await bench.shows('[data-thing="trade"]');
  const drawn = await bench.tab.evaluate(() => {
    const canvas = document.createElement('canvas');
    Object.assign(canvas, { width: 2000, height: 1000 });
    const pen = canvas.getContext('2d');
    if (pen) pen.fillRect(0, 0, 900, 400);
    return canvas.toDataURL('image/jpeg');
  });
  const plain = Buffer.from(drawn.slice(drawn.indexOf(',') + 1), 'base64');
  // Behind the marker that begins it.
  const withPlace = Buffer.concat([plain.subarray(0, 2), exif(), plain.subarray(2)]);
  expect(withPlace.includes(WHERE)).toBe(true);
  folder = folderOf({ 'plate.jpg': withPlace, 'no-photo.jpg': 'This is a letter.' });
  await bench.click('[data-thing="trade"]');
  await bench.shows('[data-part="photo-file"]');
});
afterAll(() => room?.close());

/** What lies in this browser's storage, as text of one byte a character, and the size of the picture. */
const keptPhotos = () =>
  bench.tab.evaluate(async () => {
    const db = await new Promise<IDBDatabase>((done) => {
      const asked = indexedDB.open('bedplate');
      asked.onsuccess = () => done(asked.result);
    });
    const all = await new Promise<{ name: string; bytes: ArrayBuffer }[]>((done) => {
      const asked = db.transaction('photos').objectStore('photos').getAll();
      asked.onsuccess = () => done(asked.result);
    });
    db.close();
    return Promise.all(
      all.map(async ({ name, bytes }) => {
        const { width, height } = await createImageBitmap(new Blob([bytes]));
        return { name, width, height, text: new TextDecoder('latin1').decode(bytes) };
      }),
    );
  });

it('keeps a photo upright and smaller, without what the camera wrote into the file', async () => {
  await bench.choose('[data-part="photo-file"]', `${folder}/plate.jpg`);
  await bench.shows('.photos img');
  await bench.shows('[data-part="photo-state"]', texts.added(1));
  const kept = await keptPhotos();
  expect(kept.map(({ name, width, height }) => [name, width, height])).toEqual([['plate.jpg', 800, 1600]]);
  for (const trace of ['Exif', 'Harbour Street', '4711']) expect(kept[0]?.text).not.toContain(trace);
});

it('says so where a file is no photo, and keeps nothing of it', async () => {
  await bench.choose('[data-part="photo-file"]', `${folder}/no-photo.jpg`);
  await bench.shows('[data-trouble="unreadable"]', texts.troubles.unreadable('no-photo.jpg'));
  expect(await keptPhotos()).toHaveLength(1);
});

it('takes no more than there is room for', async () => {
  await bench.choose('[data-part="photo-file"]', ...Array.from({ length: 6 }, () => `${folder}/plate.jpg`));
  await bench.shows('[data-trouble="many"]');
  await bench.shows('[data-part="photo-state"]', texts.added(5));
  expect(await keptPhotos()).toHaveLength(6);
});

it('has them again after the page was closed, beside the candidates', async () => {
  await bench.reload();
  await bench.shows('[data-thing="trade"]');
  await bench.click('[data-thing="trade"]');
  await bench.shows('.photos img');
  await bench.click('[data-answer="shuttle"]');
  await bench.shows('[data-part="beside"]');
  await bench.click('[data-part="beside"] > summary');
  await bench.shows('[data-part="own-photo"]');
});

describe.each([
  ['light', 1100],
  ['dark', 360],
] as const)('with them the enquiry, %s, at %s px', (scheme, width) => {
  it('is accessible, and needs no scrolling sideways', async () => {
    await bench.tab.setViewportSize({ width, height: 800 });
    await expectAccessible(looksOfTab(bench.tab), scheme);
    await expectReadable(looksOfTab(bench.tab));
  });
});

it('forgets them one by one', async () => {
  for (let left = 6; left > 0; left -= 1) {
    await bench.click('[data-part="remove-photo"]');
    await bench.lacks(`[data-photo]:nth-child(${left})`);
  }
  await bench.reload();
  await bench.shows('[data-thing="trade"]');
  expect(await keptPhotos()).toEqual([]);
});

it('none of this made a request or an error', async () => {
  expect(ourRequests(room.browser)).toEqual([]);
  expect(await seenErrors(room.browser)).toEqual([]);
});
