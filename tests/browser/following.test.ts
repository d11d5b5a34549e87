import { gzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Driven } from '../../src/cli/demo/driven';
import { sealPack } from '../../src/sharing/seal/seal';
import { publication } from '../../src/sharing/subscribe/publication';
import { type PackHost, servePacks } from '../support/pack-host';
import { seenErrors, until } from './hands';
import { openTestedRoom, type Room } from './support/browser';
import { followedClub, inTab, type KeptNow, keptOf, makeDue, ringAlarm } from './support/following';
import { type OwnPage, ownPage } from './support/page';

// A pack that is followed on a plain host of files over https, from the first look to a host that goes wrong. The built
// extension, the browser's own questions (answered yes in advance, as no driver can press them), a certificate that
// nobody vouches for.

const club = await followedClub();
const { id: ID, notice: NOTICE, keys } = club;

async function publish(number: number, expires: string | null = null): Promise<void> {
  host.put(await club.published(number, expires));
}

let room: Room<Driven>;
let host: PackHost;
let bench: OwnPage;
beforeAll(async () => {
  host = await servePacks();
  room = await openTestedRoom({ packs: false, hosts: ['https://127.0.0.1/*'] });
  bench = ownPage(await room.browser.openTab(room.browser.addressOf('workbench.html')));
});
afterAll(async () => {
  await room?.close();
  await host?.close();
});

const part = (name: string) => `[data-part="${name}"]`;
const ROW = `[data-pack-id="${ID}"]`;
const kept = (): Promise<KeptNow | null> => keptOf(bench.tab, ID);
/** What was asked for since the last time, hashes left out. */
function asked(): string[] {
  return host.asked.splice(0).map(({ path }) => path.replace(/^[0-9a-f]{64}/, '#'));
}
async function look(address: string): Promise<void> {
  await bench.fill('#follow-address', address);
  await bench.click(part('follow-look'));
}
const finding = (state: string) => bench.shows(`${ROW} ${part('followed')}[data-finding="${state}"]`);
async function check(state: string): Promise<void> {
  await bench.click(`${ROW} ${part('check')}`);
  await bench.shows(`${ROW} ${part('followed')}[data-checking="false"]`);
  await finding(state);
} /** The yes, and the pack as it stands there afterwards; whatever moved on the page has come to rest. */
async function take(number: number): Promise<void> {
  await bench.click(part('offer-take'));
  await bench.shows(part('follow-outcome'), `edition ${number}`);
  await bench.lacks(part('offer'));
  await bench.shows(ROW, `edition ${number}`);
  await finding('same');
}

describe('a pack is followed', () => {
  it('after a look that shows what it is, and a yes: nothing is kept before', async () => {
    await publish(1);
    await look(`${host.origin}/${NOTICE}`);
    await bench.shows(part('offer'), 'Sealed by the key');
    expect(await bench.count(ROW)).toBe(0);
    expect(await kept()).toBeNull();
    await take(1);
    await bench.shows(`${ROW} ${part('followed')}`, '127.0.0.1');
    expect(await bench.text(`${ROW} .labels`)).toContain('sealed by');
  });

  it('by requests that say nothing of who asks', async () => {
    expect(host.asked.map(({ method, path }) => `${method} ${path}`)).toEqual([
      `GET ${NOTICE}`,
      expect.stringMatching(/^GET [0-9a-f]{64}\.pack$/),
    ]);
    await check('same');
    for (const { headers } of host.asked) {
      const told = ['cookie', 'referer', 'origin', 'if-none-match', 'if-modified-since', 'authorization', 'range'];
      expect(told.filter((name) => name in headers)).toEqual([]);
    }
    expect(asked()).toEqual([NOTICE, '#.pack', NOTICE]);
  });

  it('to a newer edition, after it was shown what that changes, by a small file', async () => {
    await publish(2);
    await check('newer');
    expect(asked()).toEqual([NOTICE]);
    expect(await kept()).toMatchObject({ edition: 1 });
    await bench.click(`${ROW} ${part('see')}`);
    await bench.shows(`${ROW} ${part('offer-changes')}`, 'was Grindlewade Fennicote, is now Called 2');
    expect(asked()).toEqual([NOTICE, '#.changes']);
    expect(await kept()).toMatchObject({ edition: 1 });
    await take(2);
    expect(await kept()).toMatchObject({ edition: 2, isWhole: true });
  });

  it('or not to it: what is left is not offered as new again', async () => {
    await publish(3);
    await check('newer');
    await bench.click(`${ROW} ${part('see')}`);
    await bench.click(part('offer-leave'));
    await bench.shows(`${ROW} ${part('finding')}`, 'you have left it');
    expect(await kept()).toMatchObject({ edition: 2 });
    await bench.reload();
    await bench.shows(`${ROW} ${part('finding')}`, 'you have left it');
    // It can be taken all the same, later.
    await bench.click(`${ROW} ${part('see')}`);
    await take(3);
    asked();
  });
});

describe('a host', () => {
  it('that puts an old edition in the place of a newer one gets no further', async () => {
    await publish(2);
    await check('older');
    expect(await bench.count(`${ROW} ${part('see')}`)).toBe(0);
    expect(await kept()).toMatchObject({ edition: 3 });
  });

  it('that has another text under a number that was here is shown', async () => {
    const fork = await sealPack({ ...club.edition(3), cautions: [] }, keys);
    host.put(Object.fromEntries((await publication(fork, [])).map(({ name, text }) => [name, text])));
    await check('other-text');
    await bench.click(`${ROW} ${part('see')}`);
    await bench.shows(`${ROW} ${part('looked')}[data-state="refused"]`);
    expect(await bench.text(`${ROW} ${part('looked')}`)).toContain('another pack under the same number');
    expect(await kept()).toMatchObject({ edition: 3 });
  });

  it.each([
    ['sends elsewhere', 'moved', (_path: string, response) => void response.writeHead(302, { location: '/a' }).end()],
    ['has nothing there', 'missing', (_path, response) => void response.writeHead(404).end()],
    ['asks for patience', 'busy', (_path, response) => void response.writeHead(503).end()],
    ['has another page there', 'no-notice', (_path, response) => void response.end('<html>')],
    [
      'sends what unpacks to millions of bytes',
      'too-large',
      (_path, response) => {
        response.writeHead(200, { 'content-encoding': 'gzip' }).end(gzipSync(new Uint8Array(20_000_000)));
      },
    ],
  ] as [string, string, NonNullable<Parameters<PackHost['answer']>[0]>][])(
    'that %s is told of',
    async (_what, problem, answer) => {
      host.answer(answer);
      await bench.click(`${ROW} ${part('check')}`);
      await until(problem, async () => (await kept())?.problem === problem);
      await bench.shows(`${ROW} ${part('followed')}[data-finding="failed"] ${part('finding')}`, 'without success');
      host.answer(null);
      expect(await kept()).toMatchObject({ edition: 3 });
    },
  );

  it('from which leave to fetch was taken back is asked nothing; the pack stays followed and says so', async () => {
    asked();
    await inTab(bench.tab, 'removeLeave');
    await finding('no-leave');
    await makeDue(bench.tab, ID);
    await ringAlarm(bench.tab);
    await until('noted', async () => (await kept())?.problem === 'no-leave');
    expect(asked()).toEqual([]);
    await publish(3);
    await check('same');
    expect(asked()).toEqual([NOTICE]);
  });
});

describe('the daily check', () => {
  it('is made by the alarm although the background sleeps, and once a day', async () => {
    await publish(4);
    await makeDue(bench.tab, ID);
    await room.browser.stopWorker();
    await ringAlarm(bench.tab);
    await finding('newer');
    expect(asked()).toEqual([NOTICE]);
    await ringAlarm(bench.tab);
    await room.browser.stopWorker();
    await ringAlarm(bench.tab);
    await check('newer');
    // The one that was asked for, and none of the alarms'.
    expect(asked()).toEqual([NOTICE]);
    expect(await kept()).toMatchObject({ edition: 3 });
  });

  it('that is cut off with the background is not begun again that day, and harms nothing', async () => {
    await makeDue(bench.tab, ID);
    let reached: () => void = () => {};
    const waiting = new Promise<void>((resolve) => {
      reached = resolve;
    });
    host.answer(() => reached());
    await ringAlarm(bench.tab);
    await waiting;
    await room.browser.stopWorker();
    host.answer(null);
    await ringAlarm(bench.tab);
    await check('newer');
    expect(asked()).toEqual([NOTICE, NOTICE]);
    expect(await kept()).toMatchObject({ edition: 3, isWhole: true });
  });

  it('tells that a newer edition may be held back, once the time of the one here is over', async () => {
    await publish(5, '2026-01-31');
    await check('newer');
    await bench.click(`${ROW} ${part('see')}`);
    await bench.shows(part('offer'), '2026-01-31');
    await take(5);
    await check('overdue');
    await bench.shows(`${ROW} ${part('finding')}`, 'held back');
  });
});

describe('what is followed', () => {
  it('comes back with a pack that was removed and put back', async () => {
    await bench.click(`${ROW} ${part('remove')}`);
    await bench.lacks(ROW);
    await bench.click(part('undo'));
    await bench.shows(`${ROW} ${part('followed')}`);
  });

  it('is followed no longer where the user says so; the pack stays, and leave is given back', async () => {
    await bench.click(`${ROW} ${part('stop')}`);
    await bench.lacks(part('followed'));
    await bench.shows(ROW, 'edition 5');
    await until('no leave', async () => !(await inTab(bench.tab, 'hasLeave')));
  });

  it('of a pack that is here already is nothing but that it is followed', async () => {
    await look(`${host.origin}/${NOTICE}`);
    await bench.shows(part('offer'), 'The very same text is here already');
    await bench.click(part('offer-take'));
    await bench.shows(`${ROW} ${part('followed')}`);
    asked();
  });
});

it.each([
  ['http://127.0.0.1/a', 'not-https'],
  ['https://someone@127.0.0.1/a', 'carries-a-name'],
  ['a pack', 'not-an-address'],
])('%s is no address to follow, and nobody is asked', async (address, problem) => {
  await look(address);
  await bench.shows(`${part('look-problem')}[data-problem="${problem}"]`);
  expect(asked()).toEqual([]);
});

it('none of this made an error, and no request but to that host', async () => {
  // What the browser itself notes of a host's refusals.
  const errors = (await seenErrors(room.browser)).filter(({ text }) => !/status of (?:404|503)/.test(text));
  expect(errors).toEqual([]);
  const ours = room.browser.requests().filter(({ by }) => by !== 'browser' && by !== 'page');
  expect([...new Set(ours.map(({ url }) => url))]).toEqual([`${host.origin}/`]);
});
