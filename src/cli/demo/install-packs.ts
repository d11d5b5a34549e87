import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Chromium } from './drive-chromium';

/** The paths of the packs in a folder (*.json), by name. */
export function packsIn(folder: string): string[] {
  const names = readdirSync(folder).filter((name) => name.endsWith('.json'));
  return names.sort().map((name) => join(folder, name));
}

/**
 * Installs pack files as a user does: through the workbench's own file input, in a tab that is closed again.
 * @throws Error where a pack doesn't appear in the workbench's list.
 */
export async function installPacks(browser: Chromium, files: string[]): Promise<void> {
  const page = await browser.openTab(browser.addressOf('workbench.html'));
  for (const file of files) {
    const id = JSON.parse(readFileSync(file, 'utf8')).about.id as string;
    await page.locator('[data-part="pack-file"]').setInputFiles(file);
    await page.locator(`[data-pack-id="${id}"]`).first().waitFor({ state: 'attached', timeout: 20_000 });
  }
  await page.close();
}
