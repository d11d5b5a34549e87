import type { IncomingHttpHeaders, ServerResponse } from 'node:http';
import { createServer } from 'node:https';
import type { AddressInfo } from 'node:net';
import { selfSigned } from './self-signed';

export interface AskedFor {
  method: string;
  path: string;
  headers: IncomingHttpHeaders;
}

/** A plain web host of files, over https on the loopback address, as its keeper changes them. */
export interface PackHost {
  /** "https://127.0.0.1:PORT". */
  origin: string;
  /** All that was asked for so far, oldest first. */
  asked: AskedFor[];
  /** Puts files there, in the place of those of the same names. */
  put(files: Record<string, string | Uint8Array>): void;
  /** How all further requests are answered, in the place of files; null: with files again. */
  answer(with_: ((path: string, response: ServerResponse) => void) | null): void;
  close(): Promise<void>;
}

export async function servePacks(): Promise<PackHost> {
  const files = new Map<string, string | Uint8Array>();
  const asked: AskedFor[] = [];
  let otherwise: ((path: string, response: ServerResponse) => void) | null = null;
  const server = createServer(selfSigned(), (request, response) => {
    const path = (request.url ?? '').slice(1);
    asked.push({ method: request.method ?? '', path, headers: request.headers });
    if (otherwise) return otherwise(path, response);
    const file = files.get(path);
    if (file === undefined) return void response.writeHead(404).end('nothing here');
    // What hosts send by habit, and what would let them know a visitor again.
    const habits = { etag: '"visitor-1"', 'last-modified': 'Mon, 01 Jun 2026 10:00:00 GMT', 'set-cookie': 'visitor=1' };
    response.writeHead(200, { 'content-type': 'application/octet-stream', 'cache-control': 'max-age=600', ...habits });
    response.end(file);
  });
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen(0, '127.0.0.1', resolve);
  });
  return {
    origin: `https://127.0.0.1:${(server.address() as AddressInfo).port}`,
    asked,
    put(more) {
      for (const [name, content] of Object.entries(more)) files.set(name, content);
    },
    answer(with_) {
      otherwise = with_;
    },
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}
