import { createServer, request as forward, type IncomingMessage, type ServerResponse } from 'node:http';
import { type AddressInfo, connect } from 'node:net';
import type { Duplex } from 'node:stream';

/** Who made a request. "unknown" is nobody that was watched: a test should take it for an offence. */
export type RequestBy = 'page' | 'panel' | 'extension-page' | 'worker' | 'browser' | 'unknown';

export interface SeenRequest {
  method: string;
  /** The whole address; of an encrypted one only "https://host:port/". */
  url: string;
  by: RequestBy;
}

export interface NetworkWatch {
  /** Everything that left the browser so far, oldest first, each with who made it. */
  requests(): SeenRequest[];
  /** Tells that a watched target made a request to this address, before or after it is seen to leave. */
  claim(url: string, by: RequestBy): void;
  /** Flags that lead a Chromium's traffic through here, loopback included. */
  proxy: { server: string; bypass: string };
  close(): Promise<void>;
}

/**
 * The browser's own services, led to names that never exist (RFC 2606), so that its own calls home can be told from
 * those of pages and of the extension, and reach nobody.
 */
const OWN_SERVICES = 'browser-services.invalid';
export const OWN_SERVICE_FLAGS = [
  `--gaia-url=http://${OWN_SERVICES}/`,
  `--google-apis-url=http://${OWN_SERVICES}/`,
  `--autofill-server-url=http://${OWN_SERVICES}/`,
  `--component-updater=url-source=http://${OWN_SERVICES}/`,
];

/** Firefox's own services; it takes no other names for them, and is let to none. */
const FIREFOX_SERVICES = /(?:^|\.)(?:mozilla\.(?:com|net|org)|firefox\.com)$/;

/**
 * A proxy on loopback through which a browser under test reaches the network. It lets requests to loopback pass and
 * refuses all others, and it misses none: what a target's own events don't show (a favicon, a fetch in a worker that
 * has stopped since) still leaves through here.
 */
export async function watchNetwork(): Promise<NetworkWatch> {
  const left: { method: string; url: string; referred: boolean }[] = [];
  const claims = new Map<string, RequestBy>();
  const server = createServer((incoming, answer) => {
    const url = incoming.url ?? '';
    left.push({ method: incoming.method ?? '', url, referred: /^https?:/.test(incoming.headers.referer ?? '') });
    pass(incoming, answer, url);
  });
  server.on('connect', (incoming, socket) => {
    left.push({ method: 'CONNECT', url: `https://${incoming.url ?? ''}/`, referred: false });
    tunnel(socket, incoming.url ?? '');
  });
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen(0, '127.0.0.1', resolve);
  });
  const by = (url: string, referred: boolean): RequestBy => {
    const claimed = claims.get(keyOf(url));
    if (claimed) return claimed;
    if (hostOf(url) === OWN_SERVICES || FIREFOX_SERVICES.test(hostOf(url))) return 'browser';
    return referred ? 'page' : 'unknown';
  };
  return {
    requests: () => left.map(({ method, url, referred }) => ({ method, url, by: by(url, referred) })),
    claim: (url, who) => {
      // The extension's claim stays: a page that asks for the same address must not hide it.
      const known = claims.get(keyOf(url));
      if (!known || known === 'page') claims.set(keyOf(url), who);
    },
    proxy: { server: `http://127.0.0.1:${(server.address() as AddressInfo).port}`, bypass: '<-loopback>' },
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

function pass(incoming: IncomingMessage, answer: ServerResponse, url: string): void {
  if (hostOf(url) !== '127.0.0.1') {
    answer.writeHead(403).end();
    return;
  }
  const onward = forward(url, { method: incoming.method, headers: incoming.headers }, (reply) => {
    answer.writeHead(reply.statusCode ?? 502, reply.headers);
    reply.pipe(answer);
  });
  onward.on('error', () => {
    if (!answer.headersSent) answer.writeHead(502);
    answer.end();
  });
  incoming.pipe(onward);
}

/** Encrypted traffic to this machine passes as it is; to all others it doesn't. */
function tunnel(socket: Duplex, to: string): void {
  socket.on('error', () => {});
  const { hostname, port } = new URL(`https://${to}`);
  if (hostname !== '127.0.0.1') {
    socket.end('HTTP/1.1 403 Forbidden\r\n\r\n');
    return;
  }
  const onward = connect(Number(port || 443), hostname, () => {
    socket.write('HTTP/1.1 200 Connection Established\r\n\r\n');
    onward.pipe(socket).pipe(onward);
  });
  onward.on('error', () => socket.destroy());
}

function hostOf(url: string): string {
  return URL.canParse(url) ? new URL(url).hostname : '';
}

/** An encrypted request is seen here by host and port alone, so a claim on it counts for the host. */
function keyOf(url: string): string {
  if (!URL.canParse(url)) return url;
  const parsed = new URL(url);
  if (parsed.protocol === 'https:') return `https://${parsed.hostname}:${parsed.port || 443}/`;
  parsed.hash = '';
  return parsed.href;
}
