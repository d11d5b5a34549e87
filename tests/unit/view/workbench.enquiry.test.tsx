// @vitest-environment jsdom
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, beforeAll, describe, expect, it } from 'vitest';
import type { EnquiredRun, Enquiry, NumberLine } from '../../../src/audit/enquiry';
import type { Answer } from '../../../src/session/answer';
import { type MachineAsked, NOTHING_ASKED } from '../../../src/session/machine-asked';
import type { PackCard } from '../../../src/session/pack-card';
import { enquiryTexts as texts } from '../../../src/text/catalogue/enquiry';
import { likelyTexts } from '../../../src/text/catalogue/likely';
import { photoTexts } from '../../../src/text/catalogue/photos';
import { timeLineTexts } from '../../../src/text/catalogue/time-line';
import { OutlineDrawing } from '../../../src/view/outline/drawings';
import { Beside } from '../../../src/view/panel/LikelyPart';
import {
  type EnquiryActions,
  EnquiryRoom,
  type EnquiryState,
  Outcome,
  Written,
} from '../../../src/view/workbench/EnquiryRoom';
import { NumberResult } from '../../../src/view/workbench/NumberPart';
import { NO_PHOTOS } from '../../../src/view/workbench/OwnPhotos';
import type { PacksActions, PacksState } from '../../../src/view/workbench/PacksRoom';
import { sampleAudit, sampleLikely, sampleListing, sampleNext, sampleWords } from './sample';

const card = (id: string, runs: number, on = true): PackCard => ({
  ...{
    id,
    edition: 1,
    shipped: false,
    on,
    installedAt: '2026-06-01T10:00:00.000Z',
    sealedBy: null,
    expires: null,
    issues: [],
  },
  about: {
    ...{ title: `Pack ${id}`, language: 'en', licence: 'CC0', thing: 'sewing machine', keepers: [], note: null },
    ...{ word: 'sewing machine', outline: 'sewing-machine', first: 'club/loading', asks: id !== 'tables' },
    ...{ demo: false, models: 1, runs },
  },
});
const run = (first: string, last: string, year: number | null, holds = false): EnquiredRun => ({
  ...{ pack: 'club', entry: `k-${first}`, models: ['club/plain'], year, first, last, source: 'Allotment book' },
  ...{ place: 'North works', size: 100, holds },
});
const line = (change: Partial<NumberLine>): NumberLine => ({
  ...{ pack: 'club', scheme: 'k', maker: 'Maker', complete: false, gapAfter: null },
  runs: [run('100', '199', 1901), run('200', '299', 1902, true), run('300', '399', null)],
  ...change,
});
const enquiry = (change: Partial<Enquiry>): Enquiry => ({
  ...{ normal: '250', verdict: 'found', runs: [run('200', '299', 1902, true)], lines: [line({})] },
  ...{ suggestions: [], forms: [] },
  ...change,
});

const rest = { pictures: new Map(), place: null };

const root = document.createElement('div');
document.body.append(root);
let calls: unknown[][] = [];
function show(shelf: PackCard[], found: Enquiry | null, change: Partial<EnquiryState> = {}): void {
  calls = [];
  const note =
    (name: string) =>
    (...values: unknown[]) =>
      void calls.push([name, ...values]);
  const words = {
    models: new Map([['club/plain', 'Plainmodel']]),
    terms: new Map(),
    spots: new Map(),
    packs: new Map(),
  };
  const numbered = found && { serial: '250', answer: { enquiry: found, words } };
  const state: EnquiryState = {
    ...{ asked: NOTHING_ASKED, told: null, serial: '250', name: '', text: '', pack: null, numbered, trouble: null },
    ...{ photos: NO_PHOTOS, isPrivate: false },
    ...change,
  };
  const packs: PacksState = { shelf, trouble: null, outcome: { state: 'none' }, removed: null, isPrivate: false };
  const actions: EnquiryActions = {
    ...{ chooseThing: note('chooseThing'), saw: note('saw'), takeBack: note('takeBack') },
    ...{
      startAgain: note('startAgain'),
      write: note('write'),
      writeName: note('writeName'),
      choosePack: note('choosePack'),
      ask: note('ask'),
      writeText: note('writeText'),
      takeText: note('takeText'),
      toDraft: note('toDraft'),
      saveFile: note('saveFile'),
      photos: { pick: note('pick'), remove: note('remove') },
    },
    copyText: async (text) => calls.push(['copy', text]) > 0,
  };
  act(() =>
    render(<EnquiryRoom state={state} actions={actions} packs={packs} packsActions={{} as PacksActions} />, root),
  );
}
beforeAll(() =>
  Promise.all([
    Beside.fetched(),
    OutlineDrawing.fetched(),
    NumberResult.fetched(),
    Outcome.fetched(),
    Written.fetched(),
  ]),
);
afterEach(() => render(null, root));
const part = (name: string) => root.querySelector<HTMLElement>(`[data-part="${name}"]`);

describe('the enquiry by number', () => {
  it('says what to do where no pack that is on has tables', () => {
    show([card('trade', 0), card('tables', 9, false)], null);
    expect(part('no-tables')?.textContent).toBe(texts.noTables);
    expect(part('pack-file')).not.toBeNull();
    expect(part('ask-form')).toBeNull();
  });

  it('asks the number that is written, when its form is sent', () => {
    show([card('club', 9)], null);
    part('ask-form')?.dispatchEvent(new Event('submit', { bubbles: true, cancelable: true }));
    expect(calls).toEqual([['ask', '250', '']]);
  });

  it('lets one of several packs be asked', () => {
    show([card('club', 9), card('other', 3)], null);
    expect([...root.querySelectorAll('option')].map(({ value }) => value)).toEqual(['', 'club', 'other']);
  });

  it('shows model, year, place and source, and says that this is no proof', () => {
    show([card('club', 9)], enquiry({}));
    const text = part('enquiry')?.textContent ?? '';
    for (const each of ['200 – 299', 'Plainmodel', '1902', 'North works', 'Allotment book', texts.notProof])
      expect(text).toContain(each);
  });

  it('draws the run among its neighbours, and has the same in a table', () => {
    show([card('club', 9)], enquiry({}));
    expect(root.querySelectorAll('.years-bar')).toHaveLength(2);
    expect(root.querySelectorAll('.years-holds')).toHaveLength(1);
    const rows = [...root.querySelectorAll('.ledger tbody tr')];
    expect(rows.map((row) => row.getAttribute('data-holds'))).toEqual(['false', 'true', 'false']);
    expect(rows[1]?.textContent).toContain(timeLineTexts.holds);
    expect(rows[2]?.textContent).toContain(timeLineTexts.unknown);
    expect(root.textContent).toContain(timeLineTexts.undated);
  });

  it('draws a gap where the number would stand', () => {
    const runs = [run('100', '199', 1901), run('300', '399', 1903)];
    show([card('club', 9)], enquiry({ verdict: 'gap', runs: [], lines: [line({ gapAfter: 1, runs })] }));
    const drawn = [...root.querySelectorAll('.years-bar, .years-gap')].map((each) => each.getAttribute('class'));
    expect(drawn).toEqual(['years-bar', 'years-gap', 'years-bar']);
    expect(root.querySelector('.verdict')?.textContent).toBe(texts.verdicts.gap('250'));
  });

  it('takes a maker’s name into the answer only when the user says that it stands there', () => {
    show([card('club', 9)], enquiry({}));
    root.querySelector<HTMLButtonElement>('[data-maker="Maker"]')?.click();
    expect(calls).toEqual([['ask', '250', 'Maker']]);
    show([card('club', 9)], enquiry({}), { asked: { ...NOTHING_ASKED, name: 'Maker' } });
    expect(part('makers')).toBeNull();
  });

  it('offers what a misread number may be', () => {
    const suggestions = [{ normal: '260', models: ['club/plain'], year: 1902 }];
    show([card('club', 9)], enquiry({ verdict: 'misread', runs: [], lines: [], suggestions }));
    root.querySelector<HTMLButtonElement>('.suggestions button')?.click();
    expect(calls).toEqual([['ask', '260', '']]);
  });
});

describe('the enquiry by what is seen', () => {
  const audit = sampleAudit({ likely: [sampleLikely()], nextEvidence: [sampleNext()], findings: [] });
  const seen = [{ attribute: 'club/frame', name: 'frame', value: 'iron', text: 'cast iron' }];
  const kind = { explain: 'Heavy.', good: ['Seams.'], poor: [], fits: [], cautions: [], mind: [] };
  const answer: Answer = { ok: true, audit, listing: sampleListing, words: sampleWords, seen, kind, ...rest };
  const asked = { ...NOTHING_ASKED, seen: new Map([['club/frame', 'iron']]) };
  const told = (of: MachineAsked, change: Partial<Extract<Answer, { ok: true }>> = {}) => ({
    ...{ asked: of, asOf: '2026-06-01', answer: { ...answer, ...change } },
  });

  it('lets the thing be chosen where packs ask about several, and not where there is one', () => {
    show([card('club', 9), card('other', 3)], null);
    root.querySelector<HTMLButtonElement>('[data-thing="other"]')?.click();
    expect(calls).toEqual([['chooseThing', 'other']]);
    expect(part('machine')).toBeNull();
    show([card('club', 9)], null);
    expect(part('things')).toBeNull();
    expect(part('machine')?.textContent).toBe(texts.asking);
  });

  it('says what to do where no pack that is on asks anything', () => {
    show([card('tables', 9)], null);
    expect(part('no-things')?.textContent).toBe(texts.things.none);
  });

  it('asks one question first, and makes nothing of nothing', () => {
    show([card('club', 9)], null, { told: told(NOTHING_ASKED, { seen: [] }) });
    expect(root.querySelector('.asked')).not.toBeNull();
    for (const name of ['outcome', 'written', 'start-again']) expect(part(name)).toBeNull();
  });

  it('shows what comes of the answers, what to ask, and the whole as text', () => {
    show([card('club', 9)], enquiry({}), { asked, told: told(asked) });
    expect(part('outcome')?.textContent).toContain('Full size, iron');
    expect(part('kind')?.textContent).toContain('Heavy.');
    expect(part('questions')?.textContent).toContain('From where, please?');
    part('copy-answer')?.click();
    expect(calls[0]?.[1]).toContain('frame: cast iron');
    expect(calls[0]?.[1]).toContain('200 to 299: Plainmodel, 1902, made in North works (Allotment book)');
  });

  it('takes answers back, and begins again', () => {
    show([card('club', 9)], null, { asked, told: told(asked) });
    root.querySelector<HTMLButtonElement>('[data-seen] button')?.click();
    part('start-again')?.click();
    expect(calls).toEqual([['takeBack', 'club/frame'], ['startAgain']]);
  });

  it('can begin again where a number has settled it and no question is left', () => {
    const numbered = { ...NOTHING_ASKED, serial: '250' };
    const settledBy = { seen: [], audit: { ...audit, nextEvidence: [] } };
    show([card('club', 9)], null, { asked: numbered, told: told(numbered, settledBy) });
    expect(part('machine')?.textContent).toContain(likelyTexts.settle.done);
    expect(part('start-again')).not.toBeNull();
  });

  it('waits with the next answer until this one is told, and says so where the engine fails', () => {
    show([card('club', 9)], null, { asked, told: told(NOTHING_ASKED) });
    expect(part('machine')?.dataset.pending).toBe('true');
    show([card('club', 9)], null, { asked, told: { asked, asOf: '', answer: { ok: false, problem: 'x' } } });
    expect(part('broken')?.textContent).toBe(texts.broken);
    expect(part('start-again')).not.toBeNull();
  });
});

describe('words that somebody says of it', () => {
  it('are folded away until some count, then shown with what came of them', () => {
    show([card('club', 9)], null);
    expect(part('said')?.hasAttribute('open')).toBe(false);
    expect(part('said-state')?.textContent).toBe('');
    show([card('club', 9)], null, { text: 'Rare.', asked: { ...NOTHING_ASKED, text: 'Rare.' } });
    expect(part('said')?.hasAttribute('open')).toBe(true);
    expect(part('said-state')?.textContent).toBe(texts.said.taken);
    root.querySelector('[data-part="said-form"]')?.dispatchEvent(new Event('submit', { cancelable: true }));
    expect(calls).toEqual([['takeText']]);
  });

  it('ask which thing is meant where they don’t tell', () => {
    show([card('club', 9), card('other', 3)], null, { text: 'Rare.', asked: { ...NOTHING_ASKED, text: 'Rare.' } });
    expect(part('said-state')?.textContent).toBe(texts.said.which);
  });

  it('are held against what is known, which stands before what it is', () => {
    const asked = { ...NOTHING_ASKED, text: 'Rare.' };
    const audit = sampleAudit({ likely: [sampleLikely()] });
    const answer: Answer = {
      ok: true,
      audit,
      listing: sampleListing,
      words: sampleWords,
      seen: [],
      kind: null,
      ...rest,
    };
    show([card('club', 9)], null, { asked, text: 'Rare.', told: { asked, asOf: '2026-06-01', answer } });
    const outcome = part('outcome');
    expect(outcome?.firstElementChild?.getAttribute('data-part')).toBe('summary');
    expect(outcome?.querySelector('[data-group="disproved"]')).not.toBeNull();
    part('to-draft')?.click();
    expect(calls).toEqual([['toDraft']]);
  });
});

describe('own photos', () => {
  const photo = { id: 'a', name: 'under\u202eside.jpg', data: 'data:image/jpeg;base64,AAAA' };

  it('are shown with a way to remove each, and stand beside the candidates', () => {
    const asked = { ...NOTHING_ASKED, name: 'Maker' };
    const other = sampleLikely({ model: 'club/alloy', label: 'Alloy', probability: 0.1 });
    const audit = sampleAudit({ likely: [sampleLikely(), other] });
    const answer: Answer = {
      ok: true,
      audit,
      listing: sampleListing,
      words: sampleWords,
      seen: [],
      kind: null,
      ...rest,
    };
    const photos = { ...NO_PHOTOS, photos: [photo] };
    show([card('club', 9)], null, { asked, photos, told: { asked, asOf: '2026-06-01', answer } });
    expect(root.querySelector('.photos img')?.getAttribute('alt')).not.toContain('\u202e');
    expect(part('own-photo')?.getAttribute('src')).toBe(photo.data);
    part('remove-photo')?.click();
    expect(calls).toEqual([['remove', 'a']]);
  });

  it('say what was wrong with a file, and where there is no more room', () => {
    const troubles = [{ why: 'unreadable', name: 'x.heic' }, { why: 'full' }] as const;
    const six = Array.from({ length: 6 }, (_, n) => ({ ...photo, id: String(n) }));
    show([card('club', 9)], null, { photos: { ...NO_PHOTOS, photos: six, troubles } });
    expect(part('photo-state')?.textContent).toContain(photoTexts.troubles.unreadable('x.heic'));
    expect(part('photo-state')?.textContent).toContain(photoTexts.troubles.full);
    expect(root.querySelector<HTMLInputElement>('#photo-file')?.disabled).toBe(true);
  });

  it('hand over the files that were picked', () => {
    show([card('club', 9)], null);
    const input = root.querySelector<HTMLInputElement>('#photo-file');
    const file = new File(['x'], 'x.jpg');
    Object.defineProperty(input, 'files', { value: [file] });
    input?.dispatchEvent(new Event('change', { bubbles: true }));
    expect(calls).toEqual([['pick', [file]]]);
  });
});
