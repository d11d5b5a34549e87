import { afterAll, beforeAll, expect, it } from 'vitest';
import { type PackHost, servePacks } from '../support/pack-host';
import { killWhileTaking } from './support/kill-while-taking';
import { type Mortal, mortalBrowser } from './support/mortal-browser';

// As killed.long.test.ts, where the process of our pages is ended; here the browser's own is, and its storage with it.

let mortal: Mortal;
let host: PackHost;
beforeAll(async () => {
  host = await servePacks();
  mortal = mortalBrowser({ hosts: ['https://127.0.0.1/*'] });
});
afterAll(async () => {
  await mortal?.close();
  await host?.close();
});

it('killed at thirty moments of installing and updating, the edition before or the new one is there, whole', async () => {
  const { before, after } = await killWhileTaking(mortal, host, 30);
  console.log(`the old stood there ${before} times, the new ${after} times`);
  expect(before, 'proved nothing: the old never stood there').toBeGreaterThan(0);
  expect(after, 'proved nothing: the new never stood there').toBeGreaterThan(0);
}, 900_000);
