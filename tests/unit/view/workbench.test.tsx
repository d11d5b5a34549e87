// @vitest-environment jsdom
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, it } from 'vitest';
import type { Pack } from '../../../src/pack/schema/index';
import type { ShelvedPack } from '../../../src/session/packs';
import { workbenchTexts as texts } from '../../../src/text/catalogue/workbench';
import { type BenchActions, type BenchState, Workbench } from '../../../src/view/workbench/Workbench';

const pack: Pack = {
  schema: 1,
  about: {
    id: 'club',
    title: 'Club handbook',
    edition: 4,
    licence: 'CC0-1.0',
    language: 'en',
    demo: true,
    covers: { thing: 'sewing machine', words: ['sewing machine'] },
  },
};
const onShelf = (change: Partial<ShelvedPack> = {}): ShelvedPack => ({
  id: 'club',
  edition: 4,
  shipped: false,
  on: true,
  installedAt: '2026-06-01T10:00:00.000Z',
  pack,
  issues: [],
  ...change,
});

let root: HTMLElement;
let calls: unknown[][] = [];

function show(state: Partial<BenchState>): void {
  calls = [];
  const note =
    (name: string) =>
    (...args: unknown[]) =>
      void calls.push([name, ...args]);
  const actions = {
    install: note('install'),
    switchPack: note('switchPack'),
    remove: note('remove'),
    undoRemove: note('undoRemove'),
  } as unknown as BenchActions;
  root = document.createElement('div');
  document.body.append(root);
  const whole: BenchState = { shelf: null, trouble: null, outcome: { state: 'none' }, removed: null, ...state };
  act(() => render(<Workbench state={whole} actions={actions} />, root));
}

afterEach(() => {
  render(null, root);
  root.remove();
});

const row = () => root.querySelector<HTMLElement>('[data-pack-id="club"]');

describe('the workbench', () => {
  it('lists a pack with its title, edition, licence and labels', () => {
    show({ shelf: [onShelf()] });
    expect(row()?.querySelector('h3')?.textContent).toBe('Club handbook');
    const labels = [...(row()?.querySelectorAll('.labels span') ?? [])].map((label) => label.textContent);
    expect(labels).toEqual(['edition 4', texts.shelf.unsealed, texts.shelf.demo, 'installed 2026-06-01']);
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
    expect(row()?.textContent).toContain(texts.shelf.shipped);
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
