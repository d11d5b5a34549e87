import { afterAll, beforeAll, expect, it } from 'vitest';
import { killWhileMerging } from './support/kill-while-merging';
import { type Mortal, mortalBrowser } from './support/mortal-browser';

// A keeper's desk under a browser that is killed: its own process, and so its storage too, at any moment.

let mortal: Mortal;
beforeAll(() => {
  mortal = mortalBrowser();
});
afterAll(() => mortal?.close());

it('killed at thirty moments of merging proposals, the desk and the edition before or the new ones are there', async () => {
  const { before, after } = await killWhileMerging(mortal, 30);
  console.log(`the old stood there ${before} times, the new ${after} times`);
  expect(before, 'proved nothing: the old never stood there').toBeGreaterThan(0);
  expect(after, 'proved nothing: the new never stood there').toBeGreaterThan(0);
}, 900_000);
