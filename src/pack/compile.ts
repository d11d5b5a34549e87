import { knowledgeOf } from './compile/knowledge-of';
import { partsOf } from './compile/parts-of';
import type { Knowledge } from './knowledge';
import type { Pack } from './schema/index';

/**
 * Packs made ready to be asked. Of a pack given twice the higher edition counts.
 * @param seals pack id -> fingerprint of the key that sealed it, for packs that came sealed.
 * Never throws on packs that `parsePack` gave; a reference that leads nowhere (a base that isn't installed) is left out.
 */
export function compile(packs: readonly Pack[], seals: ReadonlyMap<string, string> = new Map()): Knowledge {
  return knowledgeOf(newestOfEach(packs).map(partsOf), seals);
}

function newestOfEach(packs: readonly Pack[]): Pack[] {
  const byId = new Map<string, Pack>();
  for (const pack of packs) {
    const there = byId.get(pack.about.id);
    if (!there || there.about.edition <= pack.about.edition) byId.set(pack.about.id, pack);
  }
  return [...byId.values()];
}
