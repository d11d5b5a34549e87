import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Panel } from './panel';

/** The looks in which the panel is judged: as narrow as the browser makes it, and wide; light and dark. */
const LOOKS = [
  { name: 'light', scheme: 'light', width: null },
  { name: 'dark', scheme: 'dark', width: null },
  { name: 'wide', scheme: 'light', width: 720 },
] as const;

/** Pictures of the real panel, whole. @returns their paths. */
export async function takePictures(panel: Panel, folder: string, name: string): Promise<string[]> {
  mkdirSync(folder, { recursive: true });
  const paths: string[] = [];
  for (const look of LOOKS) {
    await panel.setColourScheme(look.scheme);
    await panel.setWidth(look.width);
    const path = join(folder, `${name}-${look.name}.png`);
    await panel.screenshot(path);
    paths.push(path);
  }
  await panel.setColourScheme('light');
  await panel.setWidth(null);
  return paths;
}
