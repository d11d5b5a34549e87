import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type MarketServer, serveMarket } from '../../../../src/cli/demo/serve-market';

let base: string;
let market: MarketServer;

beforeAll(async () => {
  base = mkdtempSync(join(tmpdir(), 'bedplate-'));
  mkdirSync(join(base, 'market/some-page'), { recursive: true });
  mkdirSync(join(base, 'market/.hidden'));
  mkdirSync(join(base, 'market-beside'));
  writeFileSync(join(base, 'secret.txt'), 'secret');
  writeFileSync(join(base, 'market-beside/secret.txt'), 'secret');
  writeFileSync(join(base, 'market/.hidden/page.html'), 'secret');
  writeFileSync(join(base, 'market/some-page/page.html'), 'a page');
  writeFileSync(join(base, 'market/some-page/photo.svg'), '<svg/>');
  symlinkSync(join(base, 'secret.txt'), join(base, 'market/link.txt'));
  market = await serveMarket(join(base, 'market'));
});
afterAll(async () => {
  await market.close();
  rmSync(base, { recursive: true });
});

interface Answer {
  status: number;
  type: string;
  body: string;
}

/** A request with the target exactly as given: fetch would tidy it. */
function ask(target: string, headers: Record<string, string> = {}, method = 'GET'): Promise<Answer> {
  const { hostname, port } = new URL(market.origin);
  return new Promise((resolve, reject) => {
    const sent = request({ hostname, port, path: target, method, headers }, (reply) => {
      let body = '';
      reply.on('data', (chunk) => {
        body += chunk;
      });
      reply.on('end', () =>
        resolve({ status: reply.statusCode ?? 0, type: reply.headers['content-type'] ?? '', body }),
      );
    });
    sent.on('error', reject);
    sent.end();
  });
}

describe('the market on loopback', () => {
  it('serves pages and what belongs to them, with their types', async () => {
    expect(market.origin).toMatch(/^http:\/\/127\.0\.0\.1:\d+$/);
    expect(await ask('/some-page/')).toEqual({ status: 200, type: 'text/html', body: 'a page' });
    expect(await ask('/some-page/photo.svg?size=2')).toMatchObject({ status: 200, type: 'image/svg+xml' });
    expect(await ask('/some-page')).toMatchObject({ status: 301 });
    expect(market.addressOf('some-page/')).toBe(`${market.origin}/some-page/`);
  });

  it.each([
    '/../secret.txt',
    '/%2e%2e/secret.txt',
    '/..%2fsecret.txt',
    '/some-page/../../secret.txt',
    '/..%5csecret.txt',
    '/../market-beside/secret.txt',
    '/link.txt',
    '/.hidden/page.html',
    '/.hidden/',
    '/some-page/%00',
    '//secret.txt',
    '/%',
    '/none',
  ])('leads out of its folder on no path: %s', async (target) => {
    const { status, body } = await ask(target);
    expect(body).not.toContain('secret');
    expect(status).toBe(404);
  });

  it('answers to its own host only, and is read only', async () => {
    expect((await ask('/some-page/', { host: 'market.example' })).status).toBe(421);
    expect((await ask('/some-page/', {}, 'POST')).status).toBe(405);
    expect(await ask('/some-page/', {}, 'HEAD')).toMatchObject({ status: 200, body: '' });
  });

  it('tells each request', async () => {
    await ask('/some-page/?told');
    expect(market.requests.at(-1)).toEqual({ method: 'GET', path: '/some-page/?told', status: 200 });
  });
});
