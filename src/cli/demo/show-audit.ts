import type { Page } from 'playwright-core';
import type { Chromium } from './drive-chromium';
import { installPacks } from './install-packs';
import type { Panel } from './panel';

/** What the panel shows as soon as an audit stands in it. */
const AUDIT_SHOWN = '[data-part="summary"]';

/**
 * What a user does: installs the packs in the workbench, opens the listing, presses the toolbar button.
 * @returns the tab of the listing and the panel with its audit. @throws Error where no audit shows.
 */
export async function showAudit(
  browser: Chromium,
  url: string,
  packs: string[],
): Promise<{ page: Page; panel: Panel }> {
  await installPacks(browser, packs);
  const page = await browser.openTab(url);
  // The empty tab with which a browser starts.
  for (const other of browser.context.pages()) if (other.url() === 'about:blank') await other.close();
  await browser.pressToolbarButton(page);
  const panel = await browser.openPanel();
  await panel.waitForSelector(AUDIT_SHOWN);
  return { page, panel };
}
