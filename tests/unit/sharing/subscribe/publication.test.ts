import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Pack } from '../../../../src/pack/schema/index';
import { applyUpdate } from '../../../../src/sharing/propose/update-file';
import { openSealed } from '../../../../src/sharing/seal/open-seal';
import { founded, sealPack } from '../../../../src/sharing/seal/seal';
import { readNotice } from '../../../../src/sharing/subscribe/notice';
import { type FileToPublish, publication } from '../../../../src/sharing/subscribe/publication';

const demo = JSON.parse(readFileSync('fixtures/packs/grindlewade-circle.json', 'utf8')) as Pack;

let first: Pack;
let second: Pack;
let [firstFile, secondFile] = ['', ''];
let files: FileToPublish[];
beforeAll(async () => {
  const keys = (await crypto.subtle.generateKey('Ed25519', true, ['sign', 'verify'])) as CryptoKeyPair;
  first = await founded(demo, keys);
  const [model, ...models] = first.models ?? [];
  second = {
    ...first,
    about: { ...first.about, edition: first.about.edition + 1 },
    models: [
      ...models.slice(1),
      { ...model!, label: 'Another label' },
      { id: 'new-one', label: 'New', names: ['New'] },
    ],
  };
  firstFile = await sealPack(first, keys);
  secondFile = await sealPack(second, keys);
  files = await publication(secondFile, [first]);
});

const ending = (end: string) => files.find(({ name }) => name.endsWith(end))?.text ?? '';
async function here() {
  const opened = await openSealed(firstFile);
  if (opened.issues) throw new Error('not opened');
  return opened;
}

describe('what is published of an edition', () => {
  it('is the whole file, an update and, last, the notice that names both', () => {
    expect(files.map(({ name }) => name.replace(/^[0-9a-f]{64}/, '#'))).toEqual([
      ...['#.pack', '#.changes', 'grindlewade-circle.notice.json'],
    ]);
    const notice = readNotice(ending('.notice.json'));
    expect(notice).toMatchObject({ pack: second.about.id, edition: second.about.edition });
    expect(notice?.file).toEqual({ sha256: files[0]?.name.slice(0, 64), bytes: Buffer.byteLength(secondFile) });
    expect(notice?.changes).toMatchObject([
      { from: first.about.edition, file: { sha256: files[1]?.name.slice(0, 64) } },
    ]);
  });

  it('has no update that saves nothing', async () => {
    const small = { ...second, models: [], families: [], attributes: [], serials: undefined } as unknown as Pack;
    expect((await publication(secondFile, [small])).map(({ name }) => name.split('.')[1])).toEqual(['pack', 'notice']);
  });
});

describe('an update', () => {
  it('makes the new file of the old edition, byte for byte, and is far smaller', async () => {
    expect(applyUpdate(ending('.changes'), await here())).toEqual({ sealed: secondFile });
    expect(ending('.changes').length).toBeLessThan(secondFile.length / 5);
  });

  it('is put on no other edition', async () => {
    expect(applyUpdate(ending('.changes'), { ...(await here()), hash: 'another' })).toEqual({
      problem: 'another-edition',
    });
  });

  it('that was tampered with makes a file that the seal doesn’t fit', async () => {
    const made = applyUpdate(ending('.changes').replace('Another label', 'A lie about it'), await here());
    expect(await openSealed(made.problem ? '' : made.sealed)).toMatchObject({ problem: 'signature' });
  });
});
