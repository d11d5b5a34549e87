import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { expect } from 'vitest';
import type { Tab } from '../../../src/cli/demo/driven';
import type { Panel } from '../../../src/cli/demo/panel';
import { until } from '../hands';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
/** All rules of WCAG 2.0 to 2.2, levels A and AA, and what axe-core counts as good practice. */
const RUN = `axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] })
  .then(({ violations, passes }) => ({ passes: passes.length, violations: violations.map(({ id, nodes }) => id + ': ' + nodes.map((n) => n.html).join(' | ')) }))`;
const OPEN_ALL = `for (const details of document.querySelectorAll('details')) details.open = true; 0`;

export type Scheme = 'light' | 'dark';

/** One of our pages, in a tab or in the panel, as it can be looked at. */
export interface Looked {
  evaluate(script: string): Promise<unknown>;
  setScheme(scheme: Scheme): Promise<unknown>;
}

export const looksOfPanel = (panel: Panel): Looked => ({
  evaluate: (script) => panel.evaluate(script),
  setScheme: (scheme) => panel.setColourScheme(scheme),
});

export const looksOfTab = (tab: Tab): Looked => ({
  evaluate: (script) => tab.evaluate(script),
  setScheme: (colorScheme) => tab.emulateMedia({ colorScheme }),
});

/** Holds what is shown, with all that can be opened open, to the rules, in that scheme. */
export async function expectAccessible(where: Looked, scheme: Scheme): Promise<void> {
  await where.setScheme(scheme);
  await until(`it is ${scheme}`, async () =>
    Boolean(await where.evaluate(`matchMedia('(prefers-color-scheme: ${scheme})').matches`)),
  );
  await where.evaluate(OPEN_ALL);
  if (!(await where.evaluate(`typeof axe === 'object'`))) await where.evaluate(`${axe}; 0`);
  const { passes, violations } = (await where.evaluate(RUN)) as { passes: number; violations: string[] };
  expect(violations).toEqual([]);
  expect(passes).toBeGreaterThan(5);
}

interface Measures {
  /** Text that is smaller than a reader of some years reads with ease, in its own words. */
  small: string[];
  /** What is to be hit and is too low for a finger that trembles (WCAG 2.2, 2.5.8). */
  low: string[];
  /** How many pixels stand beyond the edge. */
  beyond: number;
}

const MEASURE = `(() => {
  const all = (selector) => [...document.querySelectorAll(selector)].filter((each) => each.checkVisibility());
  const says = (each) => [...each.childNodes].some((node) => node.nodeType === 3 && node.textContent.trim());
  const named = (elements) => elements.map((each) => each.outerHTML.slice(0, 120));
  return {
    small: named(all('main *').filter((each) => says(each) && parseFloat(getComputedStyle(each).fontSize) < 15)),
    low: named(all('a, button, summary').filter((each) => each.getBoundingClientRect().height < 24)),
    beyond: Math.max(0, document.documentElement.scrollWidth - innerWidth),
  };
})()`;

/** Nothing beyond the edge, nothing too small to read or to hit. */
export async function expectReadable(where: Looked): Promise<void> {
  const measures = (await where.evaluate(MEASURE)) as Measures;
  expect(measures).toEqual({ small: [], low: [], beyond: 0 } satisfies Measures);
}
