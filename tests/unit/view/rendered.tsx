import { type ComponentChild, render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, beforeAll } from 'vitest';
import { OptionDrawing, OutlineDrawing } from '../../../src/view/outline/drawings';

/**
 * A place in the document where a test shows something; emptied after each test. The drawings are there from the start,
 * as they are once a page has fetched them, whatever test has run before in the same thread.
 */
export function stage() {
  beforeAll(async () => {
    await Promise.all([OutlineDrawing.fetched(), OptionDrawing.fetched()]);
  });
  const root = document.createElement('div');
  document.body.append(root);
  afterEach(() => act(() => render(null, root)));
  return {
    root,
    show: (what: ComponentChild) => act(() => render(what, root)),
    part: (name: string) => root.querySelector<HTMLElement>(`[data-part="${name}"]`),
    all: (selector: string) => [...root.querySelectorAll<HTMLElement>(selector)],
    /** What stands there while nothing is opened. */
    textWithoutDetails(selector: string): string {
      const copy = root.querySelector(selector)?.cloneNode(true) as HTMLElement;
      for (const hidden of copy.querySelectorAll('details > :not(summary)')) hidden.remove();
      return copy.textContent ?? '';
    },
  };
}
