import { createServer, request, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { connect } from 'node:net';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type NetworkWatch, watchNetwork } from '../../../../src/cli/demo/watch-network';

let watch: NetworkWatch;
let site: Server;
let origin: string;

beforeAll(async () => {
  watch = await watchNetwork();
  site = createServer((_request, response) => response.end('hello'));
  await new Promise<void>((resolve) => site.listen(0, '127.0.0.1', resolve));
  origin = `http://127.0.0.1:${(site.address() as AddressInfo).port}`;
});
afterAll(async () => {
  await watch.close();
  site.close();
});

/** A request as a browser sends it to its proxy. */
function through(url: string, headers: Record<string, string> = {}): Promise<number> {
  const { hostname, port } = new URL(watch.proxy.server);
  return new Promise((resolve, reject) => {
    const sent = request({ hostname, port, path: url, headers: { host: new URL(url).host, ...headers } }, (reply) => {
      reply.resume();
      reply.on('end', () => resolve(reply.statusCode ?? 0));
    });
    sent.on('error', reject);
    sent.end();
  });
}

const seen = (url: string) => watch.requests().find((each) => each.url === url);

describe('the network watch', () => {
  it('lets loopback pass and nothing else', async () => {
    expect(await through(`${origin}/a`)).toBe(200);
    expect(await through('http://elsewhere.example/')).toBe(403);
  });

  it('takes a request that nobody claims for an offence', async () => {
    await through(`${origin}/unclaimed`);
    expect(seen(`${origin}/unclaimed`)?.by).toBe('unknown');
  });

  it('knows who made a request by claims, before and after, the extension before a page', async () => {
    watch.claim(`${origin}/early`, 'panel');
    await through(`${origin}/early`);
    await through(`${origin}/late`);
    watch.claim(`${origin}/late`, 'page');
    expect(seen(`${origin}/early`)?.by).toBe('panel');
    expect(seen(`${origin}/late`)?.by).toBe('page');
    watch.claim(`${origin}/late`, 'worker');
    watch.claim(`${origin}/late`, 'page');
    expect(seen(`${origin}/late`)?.by).toBe('worker');
  });

  it('sees encrypted requests, and refuses them', async () => {
    const { hostname, port } = new URL(watch.proxy.server);
    const first = await new Promise<string>((resolve) => {
      const socket = connect(Number(port), hostname, () => socket.write('CONNECT out.example:443 HTTP/1.1\r\n\r\n'));
      socket.once('data', (data) => resolve(String(data)));
    });
    expect(first).toContain('403');
    watch.claim('https://out.example/some/path', 'worker');
    expect(seen('https://out.example:443/')?.by).toBe('worker');
  });
});
