// @vitest-environment jsdom
import { act } from 'preact/test-utils';
import { beforeAll, describe, expect, it } from 'vitest';
import type { ViewingSheet } from '../../../src/audit/viewing-sheet';
import type { KeptSheet } from '../../../src/keep/schema';
import type { Answer } from '../../../src/session/answer';
import { NOTHING_SEEN } from '../../../src/session/seen';
import { sheetPage } from '../../../src/session/sheet-page';
import { sheetTexts } from '../../../src/text/catalogue/sheet';
import { sheetRoomTexts as texts } from '../../../src/text/catalogue/sheet-room';
import { OutlineDrawing } from '../../../src/view/outline/drawings';
import { SheetsRoom } from '../../../src/view/workbench/sheet/SheetsRoom';
import type { SheetsActions, SheetsState } from '../../../src/view/workbench/sheet/state';
import { stage } from './rendered';
import { sampleAudit, sampleLikely, sampleListing, sampleWords } from './sample';

const { root, show, part, all } = stage();
const ABOUT = 'https://market.example/1';
const kept: KeptSheet = { about: ABOUT, madeAt: '2026-06-01T10:00:00.000Z', listing: sampleListing };
const sheet = (change: Partial<ViewingSheet> = {}): ViewingSheet => ({
  ...{ language: 'en', title: 'A machine', url: ABOUT, place: 'Harbour Street', price: '€240', model: 'Corvane 6' },
  checks: [
    {
      ...{ attribute: 'club/frame', name: 'frame', question: 'Does a magnet stick?', where: 'The arm.', see: null },
      ...{ place: 'arm', outline: 'sewing-machine', ask: 'Would a magnet stick?' },
      options: [
        { value: 'iron', text: 'cast iron' },
        { value: 'alloy', text: 'aluminium' },
      ],
    },
    {
      ...{ attribute: 'club/free', name: 'free arm', question: null, where: null, see: 'A sleeve goes round it.' },
      ...{ place: null, outline: null, ask: 'Is it a free arm?', options: [{ value: true, text: 'yes' }] },
    },
  ],
  ...{ photographs: [{ label: 'the underside', tells: 'Metal shows.' }], cautions: ['Its catches open.'] },
  packs: ['Club'],
  ...change,
});
const answer: Answer = {
  ...{ ok: true, audit: sampleAudit({ likely: [sampleLikely()] }), listing: sampleListing, words: sampleWords },
  ...{ seen: [], kind: null, pictures: new Map(), place: null },
};

beforeAll(() => OutlineDrawing.fetched());

let calls: unknown[][] = [];
function display(change: Partial<SheetsState> = {}): void {
  calls = [];
  const names = ['choose', 'saw', 'takeBack', 'speak', 'print', 'save', 'remove', 'undoRemove'];
  const actions = Object.fromEntries(
    names.map((name) => [name, (...args: unknown[]) => void calls.push([name, ...args])]),
  ) as unknown as SheetsActions;
  const told = { about: ABOUT, asOf: '2026-06-01', sheets: [sheet()], answer };
  const state: SheetsState = {
    ...{ sheets: [kept], chosen: ABOUT, told, seen: NOTHING_SEEN, language: null, removed: null, saved: false },
    ...{ trouble: null, isPrivate: false },
    ...change,
  };
  show(<SheetsRoom state={state} actions={actions} />);
}

describe('the room of viewing sheets', () => {
  it('says how to come by one, and in private why there is none', () => {
    display({ sheets: [], chosen: null, told: null });
    expect(part('empty')?.textContent).toBe(texts.empty);
    display({ sheets: [], chosen: null, told: null, isPrivate: true });
    expect(part('private')?.textContent).toBe(texts.private);
    expect(part('empty')).toBeNull();
  });

  it('lists them, and offers to put back one that was removed', () => {
    display({ removed: kept });
    part('remove-sheet')?.click();
    part('undo-sheet')?.click();
    root.querySelector<HTMLButtonElement>('.draft-name')?.click();
    expect(calls).toEqual([['remove', ABOUT], ['undoRemove'], ['choose', ABOUT]]);
  });

  it('shows all cautions before the checks, then the checks in order with the marked drawing', () => {
    display();
    const text = part('sheet')?.textContent ?? '';
    for (const each of [
      ...sheetTexts.en.cautions,
      'Its catches open.',
      'Does a magnet stick?',
      'the underside',
      '€240',
    ])
      expect(text).toContain(each);
    expect(text.indexOf('Its catches open.')).toBeLessThan(text.indexOf('Does a magnet stick?'));
    expect(all('[data-check]').map(({ dataset }) => dataset.check)).toEqual(['club/frame', 'club/free']);
    expect(root.querySelector('[data-check="club/frame"] svg [data-part="mark"]')).not.toBeNull();
  });

  it('takes answers in by one press and gives them back as easily', () => {
    display({ seen: new Map([['club/frame', 'iron']]) });
    expect(root.querySelector<HTMLInputElement>('[data-check="club/frame"] [data-option="iron"]')?.checked).toBe(true);
    act(() => root.querySelector<HTMLInputElement>('[data-check="club/frame"] [data-option="alloy"]')?.click());
    act(() => root.querySelector<HTMLInputElement>('[data-check="club/free"] [data-option="cannot-tell"]')?.click());
    part('clear-answer')?.click();
    expect(calls).toEqual([
      ['saw', 'club/frame', 'alloy'],
      ['saw', 'club/free', null],
      ['takeBack', 'club/frame'],
    ]);
    expect(part('sheet-answered')?.textContent).toBe(texts.answered(1, 2));
    expect(part('by-now')?.textContent).toContain(sampleLikely().label);
  });

  it('can be read in either of its languages', () => {
    const told = { about: ABOUT, asOf: '2026-06-01', sheets: [sheet({ language: 'de' }), sheet()], answer };
    display({ told });
    expect(part('sheet')?.getAttribute('lang')).toBe('de');
    expect(part('sheet')?.textContent).toContain(sheetTexts.de.before);
    display({ told, language: 'en' });
    expect(part('sheet')?.textContent).toContain(sheetTexts.en.before);
  });

  it('is printed and saved', () => {
    display();
    part('print-sheet')?.click();
    part('save-sheet')?.click();
    expect(calls[0]).toEqual(['print']);
    expect(calls[1]).toEqual(['save', part('sheet'), sheetTexts.en.heading('A machine')]);
  });

  it('says so where the engine could not make it', () => {
    display({ told: { about: ABOUT, asOf: '', sheets: [], answer: { ok: false, problem: 'x' } } });
    expect(part('broken')?.textContent).toBe(texts.broken);
  });
});

describe('a sheet as a file', () => {
  it('is the sheet without what only works in the workbench, and runs and loads nothing', () => {
    display({
      seen: new Map([['club/frame', 'iron']]),
      told: { about: ABOUT, asOf: '', sheets: [sheet({ title: '</h2><script>x</script>' })], answer },
    });
    const element = part('sheet');
    if (!element) throw new Error('no sheet');
    const text = sheetPage(element, '</title><script>x</script>');
    const page = new DOMParser().parseFromString(text, 'text/html');
    expect(page.querySelectorAll('script, button, [src], link')).toHaveLength(0);
    expect(page.querySelector('meta[http-equiv]')?.getAttribute('content')).toContain("default-src 'none'");
    expect(page.querySelectorAll('fieldset')).toHaveLength(2);
    expect(page.body.textContent).toContain('</h2><script>x</script>');
  });
});
