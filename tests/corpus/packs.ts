import { readdirSync, readFileSync } from 'node:fs';
import { parsePack } from '../../src/engine';
import type { Pack } from '../../src/pack/schema/index';

const at = (path: string): URL => new URL(`../../${path}`, import.meta.url);

/** A pack of the project, by its path from the top level. @throws with its first issue */
export function packOf(path: string): Pack {
  const { pack, issues } = parsePack(readFileSync(at(path), 'utf8'));
  if (!pack) throw new Error(`${path}: ${JSON.stringify(issues?.[0])}`);
  return pack;
}

/** The shipped trade pack, then every invented club's. */
export function allPacks(): Pack[] {
  const clubs = readdirSync(at('fixtures/packs/'))
    .filter((file) => file.endsWith('.json'))
    .sort();
  return [packOf('src/pack/shipped/trade.json'), ...clubs.map((file) => packOf(`fixtures/packs/${file}`))];
}
