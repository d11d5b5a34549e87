import { expect, it } from 'vitest';
import { askedFrom } from '../../../../src/cli/demo/watch-targets';

const ASKED = 'chrome-extension://ours/sheet.js';
const request = (frame: () => string) => ({
  url: () => ASKED,
  frame: () => ({ url: () => frame() }) as never,
});

it('is the page of the frame that asks', () =>
  expect(askedFrom(request(() => 'https://market.example/ad'))).toBe('https://market.example/ad'));

it('is what is asked for, where the tab has no frame yet', () =>
  expect(
    askedFrom({
      url: () => ASKED,
      frame: () => {
        throw new Error('Frame for this navigation request is not available');
      },
    }),
  ).toBe(ASKED));
