import type { KeptLayer } from '../keep/schema';
import { parsePack } from '../pack/parse';
import { applyChanges } from '../sharing/propose/apply-changes';
import { openText } from './open-text';
import { changesOf } from './own/changed-layer';
import type { OpenedPack } from './packs';

/**
 * A pack as the user sees it, with what they have changed of it for themselves. What doesn't fit an edition is left out,
 * and where the whole would be no pack in order, the pack speaks as it is.
 */
export function openLayered(text: string, layer: Pick<KeptLayer, 'changes'>): OpenedPack {
  const read = parsePack(text);
  if (!read.pack) return openText(text);
  const opened = openText(JSON.stringify(applyChanges(read.pack, changesOf(layer)).pack));
  return opened.parts ? opened : openText(text);
}
