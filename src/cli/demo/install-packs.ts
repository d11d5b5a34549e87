import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Driven } from './driven';

/** The paths of the packs in a folder (*.json), by name. */
export function packsIn(folder: string): string[] {
  const names = readdirSync(folder).filter((name) => name.endsWith('.json'));
  return names.sort().map((name) => join(folder, name));
}

/**
 * Installs pack files as a user does, all at once: through the workbench's own file input, in a tab that is closed again.
 * @throws Error where a pack doesn't appear in the workbench's list.
 */
export async function installPacks(browser: Driven, files: string[]): Promise<void> {
  const page = await browser.openTab(browser.addressOf('workbench.html'));
  await page.waitForSelector('[data-part="pack-file"]', { state: 'attached' });
  await page.setInputFiles('[data-part="pack-file"]', files);
  for (const file of files) {
    const id = JSON.parse(readFileSync(file, 'utf8')).about.id as string;
    await page.waitForSelector(`[data-pack-id="${id}"]`, { state: 'attached' });
  }
  await page.close();
}
