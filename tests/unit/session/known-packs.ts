import { readFileSync } from 'node:fs';
import { compile } from '../../../src/pack/compile';
import { parsePack } from '../../../src/pack/parse';

/** What some packs know together. @param paths of their files */
export function knowledgeFrom(...paths: string[]) {
  return compile(
    paths.map((path) => {
      const { pack } = parsePack(readFileSync(path, 'utf8'));
      if (!pack) throw new Error(`${path} is not in order`);
      return pack;
    }),
  );
}

export const TRADE = 'src/pack/shipped/trade.json';
export const CLUB = 'fixtures/packs/grindlewade-circle.json';
