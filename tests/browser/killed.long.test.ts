import { afterAll, beforeAll, expect, it } from 'vitest';
import { openRoom, type Room } from './support/browser';
import { killWhileInstalling } from './support/kill-while-installing';

let room: Room;
beforeAll(async () => {
  room = await openRoom({ packs: false });
});
afterAll(() => room?.close());

it('killed at forty moments of an installation, the edition before or the new one is there, whole', async () => {
  const { before, after } = await killWhileInstalling(room, 40);
  console.log(`the edition before stood there ${before} times, the new one ${after} times`);
  expect(before).toBeGreaterThan(0);
  expect(after).toBeGreaterThan(0);
}, 900_000);
