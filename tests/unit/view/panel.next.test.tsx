// @vitest-environment jsdom
import { act } from 'preact/test-utils';
import { describe, expect, it } from 'vitest';
import type { NextEvidence } from '../../../src/audit/types';
import type { SeenWords } from '../../../src/session/seen-words';
import { likelyTexts } from '../../../src/text/catalogue/likely';
import { outlineTexts } from '../../../src/text/catalogue/outline';
import { NextPart, type NextProps, questionOf } from '../../../src/view/panel/NextPart';
import { stage } from './rendered';
import { sampleNext, sampleWords } from './sample';

const texts = likelyTexts.settle;
const { root, show, part, all } = stage();
let calls: unknown[][] = [];
function display(next: NextEvidence[], change: Partial<NextProps> = {}): void {
  calls = [];
  const on = {
    onSaw: (...args: unknown[]) => void calls.push(['saw', ...args]),
    onTakeBack: (...args: unknown[]) => void calls.push(['takeBack', ...args]),
  };
  const plain = { seen: [], words: sampleWords, pending: false, keptNote: texts.kept };
  show(<NextPart next={next} {...plain} {...on} {...change} />);
}
const answer = (value: string) => root.querySelector<HTMLButtonElement>(`[data-answer="${value}"]`);
const key = (name: string, held: KeyboardEventInit = {}) =>
  act(() => {
    answer('shuttle')?.dispatchEvent(
      new KeyboardEvent('keydown', { key: name, bubbles: true, cancelable: true, ...held }),
    );
  });
const seen: SeenWords[] = [
  { attribute: 'club/loading', name: 'bobbin loading', value: 'shuttle', text: 'in a shuttle' },
  { attribute: 'club/drop-feed', name: 'drop feed', value: false, text: null },
  { attribute: 'club/shank', name: 'shank', value: null, text: null },
];

describe('the question that would settle it', () => {
  it('is put with its drawing, where to look, and its answers', () => {
    display([sampleNext()]);
    expect(root.querySelector('.question')?.textContent).toBe('What can you see of this: bobbin loading?');
    const place = outlineTexts.places['slide-plate'];
    expect(root.querySelector('svg.outline')?.getAttribute('aria-label')).toBe(
      outlineTexts.marked('a sewing machine', place),
    );
    expect(root.textContent).toContain('Near the needle.');
    expect(all('[data-answer]').map((button) => button.dataset.answer)).toEqual(['shuttle', 'front', 'cannot-tell']);
    expect(answer('shuttle')?.textContent).toContain('A long thin bobbin.');
  });

  it('is the pack’s own question where it has one', () => {
    const term = { label: 'loading', question: 'Where does the bobbin go in?', explain: null, where: null, see: null };
    display([sampleNext()], { words: { ...sampleWords, terms: new Map([['club/loading', term]]) } });
    expect(root.querySelector('.question')?.textContent).toBe('Where does the bobbin go in?');
  });

  it('is answered by one press, or by "can’t tell"', () => {
    display([sampleNext()]);
    answer('front')?.click();
    answer('cannot-tell')?.click();
    expect(calls).toEqual([
      ['saw', 'club/loading', 'front'],
      ['saw', 'club/loading', null],
    ]);
  });

  it('is answered by one key, while the focus is in it and nothing else is held', () => {
    display([sampleNext()]);
    for (const name of ['2', '0', '3', 'x', 'Enter']) key(name);
    key('1', { ctrlKey: true });
    expect(calls).toEqual([
      ['saw', 'club/loading', 'front'],
      ['saw', 'club/loading', null],
    ]);
    expect(answer('front')?.getAttribute('aria-keyshortcuts')).toBe('2');
  });

  it('takes no second answer while the first is on its way', () => {
    display([sampleNext()], { pending: true, seen });
    answer('front')?.click();
    root.querySelector<HTMLButtonElement>('.seen button')?.click();
    expect(calls).toEqual([]);
    expect(part('settle')?.getAttribute('aria-busy')).toBe('true');
  });

  it('gives way to the next one, which then has the focus', () => {
    display([sampleNext()]);
    answer('front')?.click();
    display([sampleNext({ attribute: 'club/shank', name: 'shank' })], { seen: seen.slice(0, 1) });
    expect(document.activeElement?.textContent).toBe('What can you see of this: shank?');
  });

  it('has the focus as well when an answer is taken back, and when all begins again', () => {
    display([sampleNext()], { seen });
    root.querySelector<HTMLButtonElement>('.seen button')?.click();
    display([sampleNext()], { seen: seen.slice(1) });
    expect(document.activeElement?.className).toBe('question');
    (document.activeElement as HTMLElement).blur();
    let again = 0;
    const onAgain = () => {
      again += 1;
    };
    display([sampleNext()], { seen, onAgain });
    part('start-again')?.click();
    display([sampleNext()], { onAgain });
    expect([again, document.activeElement?.className]).toEqual([1, 'question']);
  });

  it('leaves the focus alone where somebody else changed something', () => {
    display([sampleNext()]);
    display([sampleNext({ attribute: 'club/shank', name: 'shank' })]);
    expect(document.activeElement).toBe(document.body);
  });

  it('is the first that can be answered by choosing, or the one to begin with', () => {
    const measure = sampleNext({ attribute: 'club/weight', options: [] });
    const other = sampleNext({ attribute: 'club/shank' });
    expect(questionOf([measure, other, sampleNext()])).toBe(other);
    expect(questionOf([measure, other, sampleNext()], 'club/loading')?.attribute).toBe('club/loading');
    expect(questionOf([measure, other], 'club/gone')).toBe(other);
    expect(questionOf([measure])).toBeNull();
  });

  it('is not there where nothing is asked and nothing was answered', () => {
    display([sampleNext({ options: [] })]);
    expect(part('settle')).toBeNull();
  });

  it('has yes and no in the catalogue’s words', () => {
    const options = [true, false].map((value) => ({ value, text: 'x', explain: null }));
    display([sampleNext({ attribute: 'club/drop-feed', options, place: null })]);
    expect(all('[data-answer] b').map((words) => words.textContent)).toEqual([texts.yes, texts.no]);
    expect(root.querySelector('svg')).toBeNull();
  });
});

describe('what was answered', () => {
  it('stands below, each to be taken back', () => {
    display([], { seen });
    expect(root.querySelector('.question')?.textContent).toBe(texts.done);
    expect(all('.seen li > span').map((row) => row.textContent)).toEqual([
      'bobbin loading: in a shuttle',
      `drop feed: ${texts.no}`,
      `shank: ${texts.notTold}`,
    ]);
    for (const button of all('.seen button')) button.click();
    expect(calls).toEqual(seen.map(({ attribute }) => ['takeBack', attribute]));
    expect(part('seen')?.textContent).toContain(texts.kept);
  });
});
