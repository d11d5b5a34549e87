import { afterAll, beforeAll, expect, it } from 'vitest';
import { openRoom, type Room } from './support/browser';
import { killWhileInstalling } from './support/kill-while-installing';

let room: Room;
beforeAll(async () => {
  room = await openRoom({ packs: false });
});
afterAll(() => room?.close());

it('everything of ours killed while a pack installs: the edition before or the new one is there, whole', async () => {
  const { before, after } = await killWhileInstalling(room, 4);
  expect(before + after).toBe(4);
  expect(before).toBeGreaterThan(0);
}, 120_000);
