import { afterAll, beforeAll, expect, it } from 'vitest';
import { killWhileEditing } from './support/kill-while-editing';
import { type Mortal, mortalBrowser } from './support/mortal-browser';

// The browser's own process is killed and started again on its profile: what its storage promises is tried with it.

let mortal: Mortal;
beforeAll(() => {
  mortal = mortalBrowser();
});
afterAll(() => mortal?.close());

it('killed at thirty moments of correcting a pack, the old layer or the new one is there, whole', async () => {
  const { before, after } = await killWhileEditing(mortal, 30);
  console.log(`the old stood there ${before} times, the new ${after} times`);
  expect(before, 'proved nothing: the old never stood there').toBeGreaterThan(0);
  expect(after, 'proved nothing: the new never stood there').toBeGreaterThan(0);
}, 900_000);
