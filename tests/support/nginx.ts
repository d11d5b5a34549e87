import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { type AddressInfo, connect } from 'node:net';
import { join, resolve } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { aptInstall, mayInstall } from '../../src/cli/demo/apt';
import { onPath } from '../../src/cli/demo/executables';
import { selfSigned } from './self-signed';

/** A request as nginx has logged it: what the visitor sent of what could let him be known again. */
export interface Logged {
  request: string;
  status: number;
  /** If-None-Match, If-Modified-Since, Cookie, Referer, Origin, Range and Authorization, each "-" where it wasn't sent. */
  told: string;
}

export interface Nginx {
  /** "https://127.0.0.1:PORT", or "http:" without TLS. */
  origin: string;
  /** Puts files into the folder that is served. */
  put(files: Record<string, string | Uint8Array>): void;
  /** What was logged since the last time. */
  log(): Logged[];
  close(): Promise<void>;
}

/** The nginx of this machine; on Debian and Ubuntu one is installed for root. @throws Error that says how to get one */
function findOrInstall(): string {
  const found = () =>
    [...onPath(['nginx'], process.env, process.platform), '/usr/sbin/nginx'].find((path) => existsSync(path));
  const there = found();
  if (there) return there;
  if (mayInstall() && aptInstall('nginx')) {
    const installed = found();
    if (installed) return installed;
  }
  throw new Error('this check needs nginx: install it (on Debian: apt-get install nginx)');
}

async function freePort(): Promise<number> {
  const server = createServer();
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  const { port } = server.address() as AddressInfo;
  await new Promise((done) => server.close(done));
  return port;
}

/**
 * Serves a folder as an ordinary host is set up to: validators, an hour in caches, compression on the way and files that
 * lie there compressed already ("name.gz"); some paths send elsewhere, refuse or ask for patience.
 */
export async function startNginx({ tls }: { tls: boolean }): Promise<Nginx> {
  const executable = findOrInstall();
  mkdirSync('.test', { recursive: true });
  const home = mkdtempSync(join(resolve('.test'), 'nginx-'));
  const folder = join(home, 'files');
  mkdirSync(folder);
  const port = await freePort();
  const { key, cert } = selfSigned();
  writeFileSync(join(home, 'key.pem'), key);
  writeFileSync(join(home, 'cert.pem'), cert);
  const temporary = ['client_body', 'proxy', 'fastcgi', 'uwsgi', 'scgi'].map(
    (kind) => `${kind}_temp_path ${home}/${kind};`,
  );
  writeFileSync(
    join(home, 'nginx.conf'),
    `daemon off; master_process off; pid ${home}/pid; error_log ${home}/error.log;
    events { worker_connections 64; }
    http {
      ${temporary.join('\n      ')}
      log_format told '$request|$status|$http_if_none_match $http_if_modified_since $http_cookie $http_referer $http_origin $http_range $http_authorization';
      access_log ${home}/access.log told;
      default_type application/octet-stream;
      gzip on; gzip_types *; gzip_min_length 200; gzip_static on;
      server {
        listen 127.0.0.1:${port} ${tls ? 'ssl' : ''};
        ssl_certificate ${home}/cert.pem; ssl_certificate_key ${home}/key.pem;
        root ${folder}; etag on; expires 1h; add_header Set-Cookie "visitor=1";
        location /moved { return 301 /elsewhere; }
        location /busy { return 503; }
        location /closed { return 403; }
      }
    }`,
  );
  const running = spawn(executable, ['-c', join(home, 'nginx.conf'), '-e', join(home, 'error.log')], {
    stdio: 'ignore',
  });
  await listening(port, running, home);
  let read = 0;
  return {
    origin: `${tls ? 'https' : 'http'}://127.0.0.1:${port}`,
    put(files) {
      for (const [name, content] of Object.entries(files)) writeFileSync(join(folder, name), content);
    },
    log() {
      const lines = readFileSync(join(home, 'access.log'), 'utf8').split('\n').filter(Boolean);
      const fresh = lines.slice(read);
      read = lines.length;
      return fresh.map((line) => {
        const [request = '', status = '', told = ''] = line.split('|');
        return { request, status: Number(status), told };
      });
    },
    async close() {
      const ended = new Promise((done) => running.once('exit', done));
      running.kill();
      await ended;
      rmSync(home, { recursive: true, force: true });
    },
  };
}

async function listening(port: number, running: ChildProcess, home: string): Promise<void> {
  for (let tries = 0; tries < 200; tries += 1) {
    if (running.exitCode !== null) throw new Error(`nginx has ended: ${readFileSync(join(home, 'error.log'), 'utf8')}`);
    const isOpen = await new Promise<boolean>((done) => {
      const socket = connect(port, '127.0.0.1', () => done(true));
      socket.on('error', () => done(false));
      socket.on('connect', () => socket.destroy());
    });
    if (isOpen) return;
    await sleep(50);
  }
  throw new Error('nginx does not listen');
}
