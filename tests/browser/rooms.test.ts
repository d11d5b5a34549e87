import { mkdirSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Driven } from '../../src/cli/demo/driven';
import { packsIn } from '../../src/cli/demo/install-packs';
import { outdatedTexts } from '../../src/text/catalogue/outdated';
import { type PackHost, servePacks } from '../support/pack-host';
import { folderOf, seenErrors, until } from './hands';
import { expectAccessible, expectReadable, looksOfTab } from './support/accessible';
import { openTestedRoom, type Room } from './support/browser';
import { PICTURES } from './support/differences';
import { followedClub, inTab } from './support/following';
import { type OwnPage, ownPage } from './support/page';

// Every room of the workbench, empty and full, held to WCAG 2.2 AA as far as axe-core can tell: wide and light, narrow
// and dark.

const PACKS = packsIn('fixtures/packs');
const club = await followedClub();
const bad = folderOf({
  'bad.json': '{"schema":2,"about":{"id":"A B"},"models":[{"id":"x"}]}',
  'earlier.pack': await club.sealed(1),
});

let room: Room<Driven>;
let host: PackHost;
let bench: OwnPage;
const publishAt = async (edition: number) => host.put(await club.published(edition));
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
const kept = () => bench.shows('[data-kept="kept"]');
const settled = () => bench.shows('[data-part="machine"][data-pending="false"]');

/** In this order, for one state leads to the next. */
const STATES: [name: string, reach: () => Promise<void>][] = [
  ['packs-alone', () => bench.shows('[data-pack-id="trade"]')],
  [
    'packs-no-address',
    async () => {
      await bench.fill('#follow-address', 'http://127.0.0.1/pack');
      await bench.click(part('follow-look'));
      await bench.shows(part('look-problem'));
    },
  ],
  [
    'packs-first-offer',
    async () => {
      await publishAt(1);
      await bench.fill('#follow-address', `${host.origin}/grindlewade-circle.notice.json`);
      await bench.click(part('follow-look'));
      await bench.shows(part('offer'));
    },
  ],
  [
    'packs-followed',
    async () => {
      await bench.click(part('offer-take'));
      await bench.shows(`${part('followed')}[data-finding="same"]`);
    },
  ],
  [
    'packs-update-offered',
    async () => {
      await publishAt(2);
      await bench.click(part('check'));
      await bench.click(part('see'));
      await bench.shows(part('offer-changes'), 'is now Called 2');
    },
  ],
  [
    'packs-host-goes-back',
    async () => {
      await bench.click(part('offer-take'));
      await bench.shows(part('follow-outcome'), 'edition 2');
      await publishAt(1);
      await bench.click(part('check'));
      await bench.shows(`${part('followed')}[data-finding="older"]`);
    },
  ],
  [
    'packs-without-leave',
    async () => {
      await inTab(bench.tab, 'removeLeave');
      await bench.shows(`${part('followed')}[data-finding="no-leave"]`);
    },
  ],
  [
    'packs-going-back',
    async () => {
      await bench.choose(part('pack-file'), `${bad}/earlier.pack`);
      await bench.shows(part('going-back'));
      await bench.click(`[data-pack-id="${club.id}"] ${part('remove')}`);
      await bench.lacks(`[data-pack-id="${club.id}"]`);
    },
  ],
  [
    'packs-bad-file',
    async () => {
      await bench.choose(part('pack-file'), `${bad}/bad.json`);
      await bench.shows(part('refused-file'));
      await bench.shows(part('issue'));
    },
  ],
  [
    'enquiry-without-tables',
    async () => {
      await bench.click(part('to-enquiry'));
      await bench.shows(part('no-tables'));
      await settled();
    },
  ],
  [
    'sheets-empty',
    async () => {
      await bench.click(part('to-sheets'));
      await bench.shows(part('empty'));
    },
  ],
  [
    'drafts-empty',
    async () => {
      await bench.click(part('to-drafts'));
      await bench.shows(part('empty'));
    },
  ],
  [
    'packs',
    async () => {
      await bench.click(part('to-packs'));
      await bench.choose(part('pack-file'), ...PACKS);
      await until('the packs', async () => (await bench.count('[data-pack-id]')) === PACKS.length + 1);
      await bench.shows('[data-part="install-outcome"] p');
    },
  ],
  [
    'packs-one-removed',
    async () => {
      await bench.click(part('remove'));
      await bench.shows(part('undo'));
    },
  ],
  [
    'drafts-full',
    async () => {
      await bench.click(part('undo'));
      await until('the packs', async () => (await bench.count('[data-pack-id]')) === PACKS.length + 1);
      await bench.click(part('to-drafts'));
      await bench.click(part('new-draft'));
      await bench.fill('#draft-title', 'Rare Grindlewade Haddercombe heavy duty free arm sewing machine');
      await bench.fill('#draft-description', 'Made in 1949. Does zigzag. Cast iron. Serial number KD 439114.');
      await bench.fill('#draft-priceText', '£395');
      await bench.shows('[data-finding][data-standing="disproved"]');
      await until('marks', async () => (await bench.count('mark')) > 1);
      await kept();
    },
  ],
  [
    'drafts-one-removed',
    async () => {
      await bench.click(part('remove-draft'));
      await bench.shows(part('undo-draft'));
    },
  ],
  [
    'enquiry-empty',
    async () => {
      await bench.click(part('to-enquiry'));
      await bench.shows(part('things'));
      await bench.shows(part('ask-form'));
    },
  ],
  ...['platen-circle', 'trade'].map((pack): [string, () => Promise<void>] => [
    `enquiry-question-${pack}`,
    async () => {
      if ((await bench.count(part('other-thing'))) > 0) await bench.click(part('other-thing'));
      await bench.click(`[data-thing="${pack}"]`);
      await bench.shows('.asked');
      await settled();
    },
  ]),
  [
    'enquiry-answered',
    async () => {
      await bench.click('[data-answer="shuttle"]');
      await bench.shows(part('outcome'));
      await bench.shows(part('written'));
      await settled();
    },
  ],
  ...['KD 439114', '155000', 'KD 4391I4', 'QQQ 1'].map((serial): [string, () => Promise<void>] => [
    `enquiry-${serial}`,
    async () => {
      await bench.fill('#enquiry-serial', serial);
      await bench.press('Enter');
      await bench.shows('.verdict', serial);
      await settled();
    },
  ]),
  [
    'enquiry-said',
    async () => {
      if (!(await bench.isShown('#enquiry-said'))) await bench.click(`${part('said')} > summary`);
      await bench.fill('#enquiry-said', 'Grindlewade Haddercombe sewing machine, weighs only 4 kg.');
      await bench.click(part('take-said'));
      await bench.shows('[data-finding][data-standing="disproved"]', '4 kg');
      await settled();
    },
  ],
];

const LOOKS = [
  { scheme: 'light', width: 1100 },
  { scheme: 'dark', width: 360 },
] as const;

describe.each(STATES)('the room in the state %s', (name, reach) => {
  beforeAll(reach);

  it.each(LOOKS)('is accessible, $scheme, and needs no scrolling sideways at $width px', async ({ scheme, width }) => {
    await bench.tab.setViewportSize({ width, height: 800 });
    await expectAccessible(looksOfTab(bench.tab), scheme);
    await expectReadable(looksOfTab(bench.tab));
    if (!PICTURES) return;
    mkdirSync(PICTURES, { recursive: true });
    await bench.tab.screenshot({ path: `${PICTURES}/bench-${name}-${width}.png`, fullPage: true });
  });
});

it('shows its time line where a number was found', async () => {
  await bench.fill('#enquiry-serial', 'KD 439114');
  await bench.press('Enter');
  await bench.shows('[data-part="enquiry"][data-verdict="found"]');
  expect(await bench.count('.years-holds')).toBe(1);
});

it('a workbench that has outlived its program says so, and offers to reload', async () => {
  await bench.tab.evaluate(() => void Promise.reject(new Error('Extension context invalidated.')));
  await bench.shows('[data-screen="outdated"]', outdatedTexts.workbench);
  for (const { scheme } of LOOKS) await expectAccessible(looksOfTab(bench.tab), scheme);
  await bench.click('button');
  await bench.shows(part('to-packs'));
});

it('none of this made an error, save the one that was made on purpose', async () => {
  const errors = await seenErrors(room.browser);
  expect(errors.filter(({ text }) => !text.includes('context invalidated'))).toEqual([]);
});
