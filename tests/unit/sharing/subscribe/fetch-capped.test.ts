import { createServer, type RequestListener, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { brotliCompressSync, gzipSync } from 'node:zlib';
import { afterEach, describe, expect, it } from 'vitest';
import { fetchCapped } from '../../../../src/sharing/subscribe/fetch-capped';

let server: Server | undefined;
afterEach(() => {
  server?.closeAllConnections();
  server?.close();
});

async function serve(answer: RequestListener): Promise<string> {
  server = createServer(answer);
  await new Promise<void>((resolve) => server?.listen(0, '127.0.0.1', resolve));
  return `http://127.0.0.1:${(server.address() as AddressInfo).port}/a`;
}

const MEGA = 1_000_000;

describe('fetching a text of bounded size', () => {
  it('answers the text and how many bytes it has', async () => {
    const address = await serve((_request, response) => response.end('Stichlänge'));
    expect(await fetchCapped(address, 100)).toEqual({ ok: true, text: 'Stichlänge', bytes: 11 });
  });

  it('takes exactly as many bytes as are allowed, and not one more', async () => {
    const address = await serve((_request, response) => response.end('12345'));
    expect((await fetchCapped(address, 5)).ok).toBe(true);
    expect(await fetchCapped(address, 4)).toEqual({ ok: false, problem: 'too-large' });
  });

  it.each([
    ['gzip', gzipSync(new Uint8Array(50 * MEGA))],
    ['br', brotliCompressSync(new Uint8Array(50 * MEGA))],
  ])('counts what %s unpacks to, and stops soon after the limit', async (encoding, body) => {
    expect(body.length).toBeLessThan(MEGA / 10);
    const address = await serve((_request, response) => {
      response.writeHead(200, { 'content-encoding': encoding, 'content-length': body.length }).end(body);
    });
    let most = 0;
    const fetched = await fetchCapped(address, MEGA, {
      progress: (bytes) => {
        most = bytes;
      },
    });
    expect(fetched).toEqual({ ok: false, problem: 'too-large' });
    expect(most).toBeLessThanOrEqual(MEGA);
  });

  it.each([
    [301, 'moved'],
    [302, 'moved'],
    [308, 'moved'],
    [404, 'missing'],
    [410, 'missing'],
    [429, 'busy'],
    [503, 'busy'],
    [403, 'refused'],
    [500, 'refused'],
  ])('%s: %s', async (status, problem) => {
    let asked = 0;
    const address = await serve((_request, response) => {
      asked += 1;
      response.writeHead(status, { location: '/elsewhere' }).end('words');
    });
    expect(await fetchCapped(address, 100)).toEqual({ ok: false, problem });
    expect(asked).toBe(1);
  });

  it('takes no bytes that are not UTF-8', async () => {
    const address = await serve((_request, response) => response.end(Uint8Array.of(0x61, 0xff)));
    expect(await fetchCapped(address, 100)).toEqual({ ok: false, problem: 'not-text' });
    const cut = await serve((_request, response) => response.end(Uint8Array.of(0x61, 0xc3)));
    expect(await fetchCapped(cut, 100)).toEqual({ ok: false, problem: 'not-text' });
  });

  it('keeps a byte order mark, which belongs to what was sealed', async () => {
    const address = await serve((_request, response) => response.end('\ufeff{}'));
    expect(await fetchCapped(address, 100)).toMatchObject({ text: '\ufeff{}', bytes: 5 });
  });

  it('gives a host up from which nothing comes', async () => {
    const silent = await serve(() => {});
    expect(await fetchCapped(silent, 100, { patience: 50 })).toEqual({ ok: false, problem: 'stalled' });
    const halting = await serve((_request, response) => response.write('x'));
    expect(await fetchCapped(halting, 100, { patience: 50 })).toEqual({ ok: false, problem: 'stalled' });
  });

  it('says that nobody is there, or that what came was cut off', async () => {
    const address = await serve((_request, response) => {
      response.writeHead(200, { 'content-length': 100 });
      response.write('x');
      setTimeout(() => response.destroy(), 10);
    });
    expect(await fetchCapped(address, 100)).toEqual({ ok: false, problem: 'unreachable' });
    server?.close();
    server?.closeAllConnections();
    expect(await fetchCapped(address, 100)).toEqual({ ok: false, problem: 'unreachable' });
  });

  it('asks without cookies, referrer or memory, and follows no redirect', async () => {
    const asked: RequestInit[] = [];
    await fetchCapped('https://packs.example/a', 10, {
      fetch: async (_address, init) => {
        asked.push(init ?? {});
        return new Response('x');
      },
    });
    expect(asked).toMatchObject([
      { method: 'GET', credentials: 'omit', referrerPolicy: 'no-referrer', cache: 'no-store', redirect: 'manual' },
    ]);
  });
});
