import { afterAll, beforeAll, expect, it } from 'vitest';
import { type PackHost, servePacks } from '../support/pack-host';
import { openRoom, type Room } from './support/browser';
import { killWhileInstalling } from './support/kill-while-installing';
import { killWhileUpdating } from './support/kill-while-updating';

let room: Room;
let host: PackHost;
beforeAll(async () => {
  host = await servePacks();
  room = await openRoom({ packs: false, hosts: ['https://127.0.0.1/*'] });
});
afterAll(async () => {
  await room?.close();
  await host?.close();
});

it('killed at forty moments of an installation, the edition before or the new one is there, whole', async () => {
  const { before, after } = await killWhileInstalling(room, 40);
  console.log(`the edition before stood there ${before} times, the new one ${after} times`);
  expect(before).toBeGreaterThan(0);
  expect(after).toBeGreaterThan(0);
}, 900_000);

it('killed at thirty moments of an update, likewise, and what is remembered and followed goes with it', async () => {
  const { before, after } = await killWhileUpdating(room, host, 30);
  console.log(`the edition before stood there ${before} times, the new one ${after} times`);
  expect(before).toBeGreaterThan(0);
  expect(after).toBeGreaterThan(0);
}, 900_000);
