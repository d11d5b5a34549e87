import { fileURLToPath } from 'node:url';
import { parsePack } from '../engine';
import type { Pack } from '../pack/schema/index';
import { cli as texts } from '../text/catalogue/cli';
import { BadInput } from './bad-input';
import { readText } from './input-file';
import { NONE_SEALED, type SealedPacks } from './sealed-packs';

const TRADE_PACK = fileURLToPath(new URL('../pack/shipped/trade.json', import.meta.url));

/** The shipped trade pack, then the packs of these files. @throws BadInput with a pack's first issue. */
export function loadPacks(files: readonly string[], sealed: SealedPacks = NONE_SEALED): Pack[] {
  return [TRADE_PACK, ...files].map((path) => sealed.get(path)?.pack ?? loadPack(path));
}

function loadPack(path: string): Pack {
  const { pack, issues } = parsePack(readText(path));
  if (pack) return pack;
  const first = issues[0] ?? { path: '', what: '', expected: '' };
  throw new BadInput(texts.bad.pack(path, issues.length, first.path, first.what, first.expected));
}
