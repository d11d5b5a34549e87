// @vitest-environment jsdom
import { expect, it, vi } from 'vitest';
import type { PriceReport, PriceSeen } from '../../../../src/audit/types';
import { SeenBehind } from '../../../../src/view/prices/SeenBehind';
import { stage } from '../rendered';

const { root, show, part, all } = stage();
const BAND: NonNullable<PriceReport['band']> = {
  ...{ low: 95, mid: 150, high: 220, half: { low: 120, high: 180 }, currency: 'GBP', kind: 'paid', grade: null },
  ...{ askedToPaid: 1.1, observations: 1, effective: 4, stated: 3 },
};
const SEEN: PriceSeen = {
  ...{ pack: 'club', entry: 'observation-1', source: null, model: 'club/m', label: 'M', kind: 'paid', amount: 120 },
  ...{ currency: 'EUR', date: '2026-03', grade: 'good', place: 'Oberwarding', link: null, note: null },
  ...{ price: 103.2, counted: 0.93, pull: 0.975, leftOut: null },
};

it('tells of each price what it was, what it counts for and by how much it moves the middle, once it is opened', async () => {
  show(<SeenBehind band={BAND} seen={[SEEN, { ...SEEN, pack: null, price: null, counted: 0, leftOut: 'no-rate' }]} />);
  expect(all('tbody tr')).toHaveLength(0);
  (part('price-table') as HTMLDetailsElement).open = true;
  await vi.waitFor(() => expect(all('tbody tr')).toHaveLength(2));
  const [counted, leftOut] = all('tbody tr').map(({ textContent }) => textContent);
  for (const said of ['€120 paid', '2026-03', 'M, good', 'Oberwarding', '£103', '0.93', '−2.5 %', 'club'])
    expect(counted).toContain(said);
  expect(leftOut).toContain('not counted: no exchange rate');
  expect(leftOut).toContain('you');
});

it('is nothing where no price was seen', () => {
  show(<SeenBehind band={BAND} seen={[]} />);
  expect(root.textContent).toBe('');
});
