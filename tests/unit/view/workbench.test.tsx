// @vitest-environment jsdom
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, it } from 'vitest';
import type { PackAbout, PackCard } from '../../../src/session/pack-card';
import { followTexts } from '../../../src/text/catalogue/follow';
import { originTexts } from '../../../src/text/catalogue/origin';
import { rememberedTexts } from '../../../src/text/catalogue/remembered';
import { workbenchTexts as texts } from '../../../src/text/catalogue/workbench';
import { DESK_CLOSED, type KeeperActions } from '../../../src/view/workbench/keeper/state';
import { OWN_CLOSED, type OwnActions } from '../../../src/view/workbench/own/state';
import { type PacksActions, PacksRoom, type PacksState } from '../../../src/view/workbench/PacksRoom';
import { REMEMBERED_NONE, type RememberedState } from '../../../src/view/workbench/packs/Remembered';
import { FOLLOWING_NOTHING, type FollowActions, type FollowState } from '../../../src/view/workbench/packs/state';
import { roomOf } from '../../../src/view/workbench/rooms';
import { Workbench } from '../../../src/view/workbench/Workbench';

const about: PackAbout = {
  title: 'Club handbook',
  language: 'en',
  licence: 'CC0-1.0',
  thing: 'sewing machine',
  ...{ word: 'sewing machine', outline: null, first: null, asks: false },
  keepers: [],
  note: null,
  demo: true,
  models: 3,
  runs: 0,
};
const onShelf = (change: Partial<PackCard> = {}): PackCard => ({
  id: 'club',
  edition: 4,
  shipped: false,
  on: true,
  installedAt: '2026-06-01T10:00:00.000Z',
  sealedBy: null,
  expires: null,
  about,
  issues: [],
  ...change,
});

let root = document.createElement('div');
let calls: unknown[][] = [];

function show(
  state: Partial<PacksState>,
  follow: Partial<FollowState> = {},
  past: Partial<RememberedState> = {},
): void {
  calls = [];
  const note =
    (name: string) =>
    (...args: unknown[]) =>
      void calls.push([name, ...args]);
  const packs: PacksActions = {
    install: note('install'),
    cancelInstall: note('cancelInstall'),
    switchPack: note('switchPack'),
    remove: note('remove'),
    undoRemove: note('undoRemove'),
  };
  const followActions: FollowActions = {
    look: note('look'),
    check: note('check'),
    see: note('see'),
    cancel: note('cancel'),
    take: note('take'),
    leave: note('leave'),
    stop: note('stop'),
  };
  root = document.createElement('div');
  document.body.append(root);
  const whole: PacksState = {
    shelf: null,
    trouble: null,
    outcome: { state: 'none' },
    removed: null,
    isPrivate: false,
    ...state,
  };
  act(() =>
    render(
      <Workbench room="packs">
        <PacksRoom
          state={whole}
          actions={packs}
          following={{ ...FOLLOWING_NOTHING, ...follow }}
          followActions={followActions}
          own={OWN_CLOSED}
          ownActions={{} as OwnActions}
          desk={DESK_CLOSED}
          keeperActions={{} as KeeperActions}
          remembered={{ ...REMEMBERED_NONE, ...past }}
          rememberedActions={{ forget: note('forget'), recall: note('recall') }}
        />
      </Workbench>,
      root,
    ),
  );
}

afterEach(() => {
  render(null, root);
  root.remove();
});

const row = () => root.querySelector<HTMLElement>('[data-pack-id="club"]');

describe('the rooms', () => {
  it('are named by the address, and the packs are shown where it names none', () => {
    expect(['', '#packs', '#drafts', '#enquiry', '#nowhere'].map(roomOf)).toEqual([
      'packs',
      'packs',
      'drafts',
      'enquiry',
      'packs',
    ]);
  });

  it('say which of them is shown', () => {
    show({});
    expect(root.querySelector('nav [aria-current="page"]')?.textContent).toBe(texts.rooms.packs);
  });
});

describe('the packs', () => {
  it('say in a private window, and nowhere else, that nothing is kept there', () => {
    show({ shelf: [onShelf()] });
    expect(root.querySelector('[data-part="private"]')).toBeNull();
    show({ shelf: [onShelf()], isPrivate: true });
    expect(root.querySelector('[data-part="private"]')?.textContent).toBe(texts.shelf.private);
  });

  it('lists a pack with its title, edition, licence and labels', () => {
    show({ shelf: [onShelf()] });
    expect(row()?.querySelector('h3')?.textContent).toBe('Club handbook');
    const labels = [...(row()?.querySelectorAll('.labels span') ?? [])].map((label) => label.textContent);
    expect(labels).toEqual(['edition 4', originTexts.unsealed, originTexts.demo, 'installed 2026-06-01']);
    expect(row()?.textContent).toContain('CC0-1.0');
  });

  it('switches and removes by controls that name the pack', () => {
    show({ shelf: [onShelf()] });
    const box = row()?.querySelector<HTMLInputElement>('input[type="checkbox"]');
    expect(box?.checked).toBe(true);
    expect(box?.closest('label')?.textContent).toBe('Use this pack: Club handbook');
    box?.click();
    row()?.querySelector<HTMLButtonElement>('[data-part="remove"]')?.click();
    expect(calls).toEqual([
      ['switchPack', 'club', false],
      ['remove', 'club'],
    ]);
  });

  it('lets the shipped pack be switched off, not removed', () => {
    show({ shelf: [onShelf({ shipped: true, installedAt: null })] });
    expect(row()?.querySelector('[data-part="remove"]')).toBeNull();
    expect(row()?.querySelector('input[type="checkbox"]')).not.toBeNull();
    expect(row()?.textContent).toContain(originTexts.shipped);
    expect(row()?.textContent).toContain('three models');
  });

  it('says by whom a pack was sealed, and nothing of the kind of the one that came with the program', () => {
    show({ shelf: [onShelf({ sealedBy: '0a1b 2c3d' })] });
    expect(row()?.querySelector('.labels')?.textContent).toContain('sealed by 0a1b 2c3d');
    expect(row()?.textContent).toContain(originTexts.sealedExplain);
    render(null, root);
    show({ shelf: [onShelf({ shipped: true })] });
    expect(row()?.textContent).not.toContain('sealed');
  });

  it('says from which edition to which, and whose key it was handed over to', () => {
    const replaces = { edition: 4, otherText: true };
    const installed = (handedOver: { edition: number; from: string; to: string }[]) => ({
      outcome: {
        state: 'installed' as const,
        packs: [{ id: 'club', title: 'Club handbook', edition: 5, sealedBy: null, replaces, handedOver }],
      },
    });
    show(installed([]));
    const outcome = () => root.querySelector('[data-part="install-outcome"]');
    expect(outcome()?.textContent).toBe(texts.install.done(texts.install.replaced('Club handbook', 4, 5, true)));
    render(null, root);
    show(installed([{ edition: 5, from: '0123 4567', to: '8901 2345' }]));
    const told = outcome()?.querySelector('[data-part="handed-over"]')?.textContent;
    expect(told).toContain('0123 4567');
    expect(told).toContain('8901 2345');
  });

  it('goes back to an earlier edition only after a yes', () => {
    show({ outcome: { state: 'going-back', packs: [{ title: 'Club handbook', edition: 3, after: 5 }] } });
    expect(root.querySelector('[data-part="going-back"]')?.textContent).toContain('edition 5');
    root.querySelector<HTMLButtonElement>('[data-part="leave-it"]')?.click();
    root.querySelector<HTMLButtonElement>('[data-part="go-back"]')?.click();
    expect(calls.map(([name]) => name)).toEqual(['cancelInstall', 'install']);
    expect(calls[1]?.[1]).toBe('the-same-going-back');
  });

  it('shows how much of a large file has been read, and lets it be stopped', () => {
    show({ outcome: { state: 'reading', file: 'large.json', done: 20_000_000, all: 52_000_000 } });
    const progress = root.querySelector('progress');
    expect([progress?.value, progress?.max]).toEqual([20_000_000, 52_000_000]);
    expect(root.querySelector('[data-part="install-progress"]')?.textContent).toContain('20 of 52 MB');
    root.querySelector<HTMLButtonElement>('[data-part="cancel-install"]')?.click();
    expect(calls.map(([name]) => name)).toEqual(['cancelInstall']);
    render(null, root);
    show({ outcome: { state: 'checking', file: 'large.json' } });
    expect(root.querySelector('progress')?.hasAttribute('value')).toBe(false);
  });

  it('lists every issue of a refused file with path, what and expected', () => {
    const issues = [{ path: 'models[3].id', what: '"A B" is there', expected: 'an id' }];
    show({ shelf: [], outcome: { state: 'refused', refused: [{ file: 'bad.json', issues }] } });
    const issue = root.querySelector('[data-part="issue"]')?.textContent ?? '';
    for (const part of ['models[3].id', '"A B" is there', 'an id']) expect(issue).toContain(part);
    expect(root.querySelector('[data-part="install-outcome"]')?.textContent).toBe(texts.install.refused(1));
  });

  it('counts the issues that it does not list', () => {
    const issues = Array.from({ length: 34 }, (_, n) => ({ path: `models[${n}]`, what: 'x', expected: 'y' }));
    show({ shelf: [], outcome: { state: 'refused', refused: [{ file: 'bad.json', issues }] } });
    expect(root.querySelectorAll('[data-part="issue"]')).toHaveLength(30);
    expect(root.textContent).toContain(texts.install.more(4));
  });

  it('offers to put a removed pack back', () => {
    show({ shelf: [], removed: 'Club handbook' });
    root.querySelector<HTMLButtonElement>('[data-part="undo"]')?.click();
    expect(calls.map(([name]) => name)).toEqual(['undoRemove']);
  });

  it('says what troubles the storage', () => {
    show({ trouble: 'full' });
    expect(root.querySelector('[role="alert"]')?.textContent).toBe(texts.troubles.full);
  });
});

describe('packs that were here', () => {
  const gone = { id: 'club-key', name: 'club', edition: 7, sealedBy: '0123 4567' };
  const part = (name: string) => root.querySelector<HTMLElement>(`[data-part="${name}"]`);

  it('are told with what is remembered of each, and forgotten one by one', () => {
    show({ shelf: [onShelf()] });
    expect(part('remembered')).toBeNull();
    show({ shelf: [onShelf()] }, {}, { packs: [gone] });
    for (const words of ['club', 'up to edition 7', '0123 4567', rememberedTexts.means])
      expect(part('remembered')?.textContent).toContain(words);
    expect(part('forget')?.textContent).toBe('Forget it: club');
    part('forget')?.click();
    expect(calls).toEqual([['forget', 'club-key']]);
  });

  it('can be remembered again, and say what troubles the storage', () => {
    show({ shelf: [] }, {}, { forgotten: 'club', trouble: 'failed' });
    expect(part('remembered')?.textContent).toContain(rememberedTexts.forgotten('club'));
    expect(part('remembered')?.querySelector('[role="alert"]')?.textContent).toBe(texts.troubles.failed);
    part('undo-forget')?.click();
    expect(calls.map(([name]) => name)).toEqual(['recall']);
  });
});

describe('an edition whose last day has passed', () => {
  const over = () => root.querySelector('[data-part="over"]')?.textContent;

  it('says so, wherever it came from; where it is followed that says it', () => {
    show({ shelf: [onShelf({ expires: '2020-06-30' })] });
    expect(over()).toBe(followTexts.over('2020-06-30'));
    show({ shelf: [onShelf({ expires: '9999-06-30' })] });
    expect(over()).toBeUndefined();
    const followed = {
      ...{ id: 'club', address: 'https://packs.example/club', since: '', triedAt: null, checkedAt: null, due: 0 },
      ...{ failures: 0, finding: { state: 'overdue' as const }, file: { edition: 4, sha256: '' }, left: null },
    };
    show({ shelf: [onShelf({ expires: '2020-06-30' })] }, { subscriptions: [followed] });
    expect(over()).toBeUndefined();
    expect(root.querySelector('[data-part="finding"]')?.textContent).toContain('2020-06-30');
  });
});
