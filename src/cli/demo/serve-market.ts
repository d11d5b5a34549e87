import { createReadStream, realpathSync, statSync } from 'node:fs';
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, sep } from 'node:path';

/** Content types of what a market page may hold; anything else is sent as bytes that no browser interprets. */
const TYPES: Record<string, string> = {
  '.html': 'text/html', // without a charset: a page's own meta or byte-order mark decides, as on a real site
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.jpg': 'image/jpeg',
  '.jpeg': 'image/jpeg',
  '.webp': 'image/webp',
  '.gif': 'image/gif',
  '.ico': 'image/x-icon',
  '.txt': 'text/plain; charset=utf-8',
};

export interface ServedRequest {
  method: string;
  path: string;
  status: number;
}

export interface MarketServer {
  /** "http://127.0.0.1:PORT", without a slash at the end. */
  origin: string;
  /** Every request so far, oldest first. */
  requests: readonly ServedRequest[];
  /** The address of a file or folder of the market: `addressOf('some-page/')`. */
  addressOf(path: string): string;
  close(): Promise<void>;
}

/**
 * Serves a folder of pages on a free port of the loopback address, read only.
 * A request must name that very host and port (no page of another name can be pointed here), and answers only files
 * inside the folder, whatever links or dots it holds. A folder answers its page.html or index.html.
 * @param folder a path; @param onRequest is told each request as it is answered.
 */
export async function serveMarket(
  folder: string,
  onRequest: (request: ServedRequest) => void = () => {},
): Promise<MarketServer> {
  const root = realpathSync(folder);
  const requests: ServedRequest[] = [];
  const server = createServer((request, response) => {
    const status = answer(request, response, root, host());
    const seen = { method: request.method ?? '', path: request.url ?? '', status };
    requests.push(seen);
    onRequest(seen);
  });
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen(0, '127.0.0.1', resolve);
  });
  const host = () => `127.0.0.1:${(server.address() as AddressInfo | null)?.port}`;
  const origin = `http://${host()}`;
  return {
    origin,
    requests,
    addressOf: (path) => new URL(path.replace(/^\/+/, ''), `${origin}/`).href,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

function answer(request: IncomingMessage, response: ServerResponse, root: string, host: string): number {
  const end = (status: number, headers: Record<string, string> = {}) => {
    response.writeHead(status, { 'content-type': 'text/plain; charset=utf-8', ...headers }).end();
    return status;
  };
  if (request.headers.host !== host) return end(421);
  if (request.method !== 'GET' && request.method !== 'HEAD') return end(405, { allow: 'GET, HEAD' });
  const url = parse(request.url ?? '/', host);
  const file = url && fileOf(root, url.pathname);
  if (!file) return end(404);
  // Relative addresses inside a folder's page need the slash.
  if (file.folder && !url.pathname.endsWith('/')) return end(301, { location: `${url.pathname}/` });
  response.writeHead(200, {
    'content-type': TYPES[extname(file.path).toLowerCase()] ?? 'application/octet-stream',
    'content-length': String(file.size),
    'cache-control': 'no-store',
    'x-content-type-options': 'nosniff',
  });
  if (request.method === 'HEAD') response.end();
  else
    createReadStream(file.path)
      .on('error', () => response.destroy())
      .pipe(response);
  return 200;
}

function parse(target: string, host: string): URL | null {
  // Only a path: "//elsewhere/x" or a whole address is somebody else's.
  if (!target.startsWith('/') || target.startsWith('//')) return null;
  try {
    return new URL(target, `http://${host}`);
  } catch {
    return null;
  }
}

function fileOf(root: string, pathname: string): { path: string; size: number; folder: boolean } | null {
  try {
    const decoded = decodeURIComponent(pathname);
    if (/[\0\\]/.test(decoded) || decoded.split('/').some((part) => part.startsWith('.'))) return null;
    const asked = realpathSync(join(root, decoded));
    const folder = statSync(asked).isDirectory();
    const names = folder ? ['page.html', 'index.html'].map((name) => join(asked, name)) : [asked];
    for (const name of names) {
      const path = realpathIfThere(name);
      if (!path || (path !== root && !path.startsWith(root + sep))) continue;
      const stats = statSync(path);
      if (stats.isFile()) return { path, size: stats.size, folder };
    }
    return null;
  } catch {
    return null;
  }
}

function realpathIfThere(path: string): string | null {
  try {
    return realpathSync(path);
  } catch {
    return null;
  }
}
