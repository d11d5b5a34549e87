// @vitest-environment jsdom
import { expect, it } from 'vitest';
import { SeenWhere } from '../../../../src/view/prices/SeenWhere';
import { stage } from '../rendered';

const { root, show, part } = stage();

it('says place and note, and opens the page in a tab of its own that is told nothing of ours', () => {
  const link = 'https://market.example/adverts/1';
  show(<SeenWhere of={{ place: 'Oberwarding', note: 'with its case', link }} />);
  expect(part('seen-place')?.textContent).toBe('Oberwarding');
  expect(part('seen-note')?.textContent).toBe('with its case');
  const address = part('seen-link')?.querySelector('a');
  expect(address?.textContent).toBe(link);
  expect(address?.getAttribute('href')).toBe(link);
  expect(address?.getAttribute('target')).toBe('_blank');
  expect(address?.getAttribute('rel')).toBe('noreferrer');
});

it.each(['javascript:alert(1)', 'data:text/html,x', 'market.example/1', ' https://market.example'])(
  '%s leads nowhere: it is text alone',
  (link) => {
    show(<SeenWhere of={{ link }} />);
    expect(part('seen-link')?.textContent).toBe(link);
    expect(root.querySelector('a')).toBeNull();
  },
);

it('shows what would hide in a pack’s words, and nothing where nothing was noted', () => {
  show(<SeenWhere of={{ note: 'paid \u202e091' }} />);
  expect(part('seen-note')?.textContent).toBe('paid ⟨U+202E⟩091');
  show(<SeenWhere of={{ place: null, link: null, note: null }} />);
  expect(root.textContent).toBe('');
});
