// @vitest-environment jsdom
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, beforeAll, describe, expect, it } from 'vitest';
import type { Finding } from '../../../src/audit/types';
import type { KeptDraft } from '../../../src/keep/schema';
import { readDraft } from '../../../src/listing/draft';
import type { Answer } from '../../../src/session/answer';
import { NOTHING_SEEN } from '../../../src/session/seen';
import { draftRoomTexts as texts } from '../../../src/text/catalogue/draft-room';
import { DraftAnswered } from '../../../src/view/workbench/DraftAudit';
import { type DraftsActions, DraftsRoom, type DraftsState } from '../../../src/view/workbench/DraftsRoom';
import { sampleAudit, sampleLikely, sampleNext, sampleWords } from './sample';

const draft: KeptDraft = {
  id: 'one',
  draft: { title: 'A full size machine', description: 'Heavy.' },
  changedAt: '2026-06-01T10:00:00.000Z',
};
const finding: Finding = {
  id: 'claim-fact/size at title:2',
  check: 'claim-fact',
  standing: 'disproved',
  attribute: null,
  said: [{ field: 'title', quote: 'full size', start: 2, end: 11 }],
  known: [{ pack: 'club', entry: 'club/model', text: 'Three-quarter size.', source: null }],
  text: '“full size” doesn’t hold.',
  ask: null,
};
const answer: Answer = {
  ok: true,
  listing: readDraft(draft.draft),
  audit: sampleAudit({ findings: [finding] }),
  ...{ words: sampleWords, seen: [], kind: null, pictures: new Map(), place: null },
};

const root = document.createElement('div');
document.body.append(root);
let calls: unknown[][] = [];
function show(state: Partial<DraftsState>): void {
  calls = [];
  const names = ['create', 'choose', 'write', 'saw', 'takeBack', 'copy', 'remove', 'undoRemove'];
  const actions = Object.fromEntries(
    names.map((name) => [name, (...args: unknown[]) => void calls.push([name, ...args])]),
  ) as unknown as DraftsActions;
  const whole: DraftsState = {
    drafts: [draft],
    chosen: null,
    sitting: 0,
    parted: null,
    seen: NOTHING_SEEN,
    answered: null,
    kept: 'blank',
    copied: 'none',
    removed: null,
    trouble: null,
    isPrivate: false,
    ...state,
  };
  act(() => render(<DraftsRoom state={whole} actions={actions} />, root));
}
beforeAll(() => DraftAnswered.fetched());
afterEach(() => render(null, root));

const part = (name: string) => root.querySelector<HTMLElement>(`[data-part="${name}"]`);

describe('the drafts', () => {
  it('say what to do where there are none', () => {
    show({ drafts: [] });
    expect(part('empty')?.textContent).toBe(texts.empty);
    part('new-draft')?.click();
    expect(calls[0]?.[0]).toBe('create');
  });

  it('mark the words of a finding in the field and lead from there to the finding', () => {
    show({ chosen: 'one', answered: { draft: draft.draft, seen: NOTHING_SEEN, answer } });
    const field = root.querySelector('[data-field="title"]');
    expect([...(field?.querySelectorAll('mark') ?? [])].map((mark) => mark.textContent)).toEqual(['full size']);
    const link = field?.querySelector<HTMLAnchorElement>('.mark-links a');
    expect(link?.textContent).toContain('full size');
    const shownFinding = root.querySelector('[data-finding="claim-fact"]');
    expect(link?.hash).toBe(`#${shownFinding?.id}`);
    link?.click();
    expect(document.activeElement).toBe(shownFinding);
    expect(field?.querySelector('textarea')?.getAttribute('aria-describedby')).toBe('draft-title-marks');
  });

  it('keep the text behind a field the same as the text in it', () => {
    show({ chosen: 'one', answered: { draft: draft.draft, seen: NOTHING_SEEN, answer } });
    for (const field of root.querySelectorAll('.field')) {
      const under = field.querySelector('.marked-under')?.textContent ?? '';
      expect(under.replace(/\u200b$/, '')).toBe(field.querySelector('textarea')?.value);
    }
  });

  it('ask what would settle which one it is, one answer at a time', () => {
    const asking = { ...answer, audit: sampleAudit({ likely: [sampleLikely()], nextEvidence: [sampleNext()] }) };
    show({ chosen: 'one', answered: { draft: draft.draft, seen: NOTHING_SEEN, answer: asking } });
    expect(part('likely')?.textContent).toContain('Full size, iron');
    root.querySelector<HTMLButtonElement>('[data-answer="front"]')?.click();
    expect(calls).toEqual([['saw', 'club/loading', 'front']]);
    const seen = new Map([['club/loading', 'front']]);
    show({ chosen: 'one', seen, answered: { draft: draft.draft, seen: NOTHING_SEEN, answer: asking } });
    root.querySelector<HTMLButtonElement>('[data-answer="shuttle"]')?.click();
    expect(calls).toEqual([]);
  });

  it('take no line breaks into a field of one line', () => {
    show({ chosen: 'one' });
    const title = root.querySelector<HTMLTextAreaElement>('#draft-title');
    if (!title) throw new Error('no title');
    title.value = 'Old\n machine';
    title.dispatchEvent(new Event('input', { bubbles: true }));
    expect(calls).toEqual([['write', 'title', 'Old machine']]);
  });

  it('can be deleted and put back', () => {
    show({ removed: draft });
    part('undo-draft')?.click();
    part('remove-draft')?.click();
    expect(calls.map(([name]) => name)).toEqual(['undoRemove', 'remove']);
  });

  it('say that a private window keeps nothing', () => {
    show({ isPrivate: true });
    expect(part('private')?.textContent).toBe(texts.private);
  });
});
