import { it } from 'vitest';
import { expectAccessible, expectReadable, looksOfTab } from './accessible';
import type { OwnPage } from './page';

/** Two tests: a room as it stands is accessible, wide in light and narrow in dark; each leaves a picture of that name. */
export function isAccessibleAtBothWidths(name: string, benchOf: () => OwnPage): void {
  it.each([
    ['light', 1100],
    ['dark', 360],
  ] as const)('is accessible, %s, at %i px', async (scheme, width) => {
    const { tab } = benchOf();
    await tab.setViewportSize({ width, height: 800 });
    await expectAccessible(looksOfTab(tab), scheme);
    await expectReadable(looksOfTab(tab));
    await tab.screenshot({ path: `.test/${name}-${width}.png`, fullPage: true });
    await tab.setViewportSize({ width: 1100, height: 800 });
  });
}
