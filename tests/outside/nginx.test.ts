import { gzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { fetchCapped } from '../../src/sharing/subscribe/fetch-capped';
import { type Nginx, startNginx } from '../support/nginx';

// How packs are fetched, against nginx as Debian packages it (https://nginx.org): what it sends by itself, and what it
// logs of who asked. tests/browser/nginx.test.ts does the same with the real browsers, caches and all.

let nginx: Nginx;
beforeAll(async () => {
  nginx = await startNginx({ tls: false });
}, 300_000);
afterAll(() => nginx?.close());

const TOLD_NOTHING = '- - - - - - -';
const MEGA = 1_000_000;

describe('a host that is nginx', () => {
  it('offers validators and caching, and is told of neither', async () => {
    nginx.put({ notice: 'first' });
    const headers = (await fetch(`${nginx.origin}/notice`)).headers;
    expect([headers.get('etag'), headers.get('last-modified'), headers.get('cache-control')]).toEqual([
      ...[expect.stringMatching(/./), expect.stringMatching(/GMT$/), 'max-age=3600'],
    ]);
    nginx.log();
    expect(await fetchCapped(`${nginx.origin}/notice`, 100)).toMatchObject({ text: 'first' });
    nginx.put({ notice: 'second' });
    expect(await fetchCapped(`${nginx.origin}/notice`, 100)).toMatchObject({ text: 'second' });
    expect(nginx.log()).toEqual([
      { request: 'GET /notice HTTP/1.1', status: 200, told: TOLD_NOTHING },
      { request: 'GET /notice HTTP/1.1', status: 200, told: TOLD_NOTHING },
    ]);
  });

  it('compresses on the way: what counts is what comes out', async () => {
    const text = 'the same again. '.repeat(1_000);
    nginx.put({ 'long.json': text });
    const sent = await fetch(`${nginx.origin}/long.json`);
    expect(sent.headers.get('content-encoding')).toBe('gzip');
    expect(await fetchCapped(`${nginx.origin}/long.json`, text.length)).toEqual({ ok: true, text, bytes: text.length });
    expect(await fetchCapped(`${nginx.origin}/long.json`, text.length - 1)).toEqual({
      ok: false,
      problem: 'too-large',
    });
  });

  it('holds a small file that unpacks to a huge one: it is cut off', async () => {
    const bomb = gzipSync(new Uint8Array(200 * MEGA));
    nginx.put({ 'bomb.gz': bomb, bomb: '' });
    expect(bomb.length).toBeLessThan(MEGA);
    let most = 0;
    const fetched = await fetchCapped(`${nginx.origin}/bomb`, MEGA, {
      progress: (bytes) => {
        most = bytes;
      },
    });
    expect(fetched).toEqual({ ok: false, problem: 'too-large' });
    expect(most).toBeLessThanOrEqual(MEGA);
  });

  it.each([
    ['/moved', 'moved'],
    ['/nothing', 'missing'],
    ['/busy', 'busy'],
    ['/closed', 'refused'],
  ])('answers %s: %s, and is asked once', async (path, problem) => {
    nginx.log();
    expect(await fetchCapped(nginx.origin + path, 1_000)).toEqual({ ok: false, problem });
    expect(nginx.log()).toHaveLength(1);
  });
});
