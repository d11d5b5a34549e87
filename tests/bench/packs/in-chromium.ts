import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { build } from 'vite';
import type { Sizes } from './in-thread';

const ADDRESS = 'https://bench.example/';

/** What is measured, as one script. */
async function bundle(): Promise<string> {
  const entry = fileURLToPath(new URL('in-thread.ts', import.meta.url));
  const built = await build({
    configFile: false,
    logLevel: 'silent',
    build: { write: false, lib: { entry, formats: ['iife'], name: 'measured' } },
  });
  const [first] = Array.isArray(built) ? built : [built];
  if (!first || !('output' in first)) throw new Error('nothing was built');
  return first.output[0].code;
}

export interface Round {
  text: { get: number; all: number };
  bytes: { get: number; open: number; all: number };
}

export interface Measured {
  sizes: Sizes;
  rounds: Round[];
}

/**
 * Installs a pack in a real Chromium, then asks for it: in turns, each time in a page and a thread that have just been started, so that
 * nothing is warm but what the browser itself keeps warm. On a profile on the disk, as people have: in a passing one the
 * browser's storage lies in its memory, and is the slower for it.
 */
export async function measureInChromium(
  executablePath: string,
  [models, runs, serial]: [models: number, runs: number, serial: string],
  rounds: number,
): Promise<Measured> {
  const script = await bundle();
  // In the project's own folder: a sandboxed package of Chromium doesn't see the machine's /tmp.
  mkdirSync('.test', { recursive: true });
  const profile = mkdtempSync(join(resolve('.test'), 'bench-'));
  const args = ['--no-sandbox', '--disable-gpu'];
  const browser = await chromium.launchPersistentContext(profile, { executablePath, headless: true, args });
  try {
    const page = await browser.newPage();
    await page.route('**/*', (route) =>
      route.request().url().endsWith('.js')
        ? route.fulfill({ body: script, contentType: 'text/javascript; charset=utf-8' })
        : route.fulfill({ body: '<!doctype html>', contentType: 'text/html' }),
    );
    const fresh = async <T>(...task: (string | number)[]): Promise<T> => {
      await page.goto(ADDRESS);
      return (await page.evaluate(inThread, task)) as T;
    };
    const sizes = await fresh<Sizes>('install', models, runs);
    const all: Round[] = [];
    for (let round = 0; round < rounds; round++)
      all.push({
        text: await fresh('byText'),
        bytes: await fresh('byBytes', sizes.hash, serial),
      });
    return { sizes, rounds: all };
  } finally {
    await browser.close();
    rmSync(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
  }
}

/** Runs in the page: has a new thread do the task. */
function inThread(task: (string | number)[]): Promise<unknown> {
  return new Promise((resolve, reject) => {
    const thread = new Worker('measured.js');
    thread.onmessage = ({ data }) => ('error' in data ? reject(new Error(data.error)) : resolve(data.value));
    thread.onerror = ({ message }) => reject(new Error(message));
    thread.postMessage(task);
  });
}
