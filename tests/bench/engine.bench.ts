import { readFileSync } from 'node:fs';
import { JSDOM } from 'jsdom';
import { audit, collect, compile, parsePack, settle } from '../../src/engine';
import type { Pack } from '../../src/pack/schema/index';
import { ROOT } from '../steps/root';
import type { Benchmark } from './benchmark';

const read = (path: string) => readFileSync(`${ROOT}/${path}`, 'utf8');

function packOf(text: string): Pack {
  const { pack, issues } = parsePack(text);
  if (!pack) throw new Error(issues[0]?.what);
  return pack;
}

const tradeText = read('src/pack/shipped/trade.json');
const clubText = read('fixtures/packs/grindlewade-circle.json');
const packs = [packOf(tradeText), packOf(clubText)];
const knowledge = compile(packs);

const url = 'https://market.example/1';
const page = read('fixtures/market/wendelow-industrial-zigzag/page.html');
const { document } = new JSDOM(page, { url }).window;
const harvest = collect(document);
const listing = settle(harvest, url);
const asOf = '2026-01-01';

/** A table as large as a well-kept one gets: blocks of 100 numbers in rising order. */
function largePack(runs: number): Pack {
  const column = <T>(value: (i: number) => T) => Array.from({ length: runs }, (_, i) => value(i));
  return {
    ...packOf(clubText),
    serials: {
      schemes: [{ id: 'x', prefix: 'X', digits: 9 }],
      runs: {
        scheme: column(() => 'x'),
        first: column((i) => String(i * 100).padStart(9, '0')),
        last: column((i) => String(i * 100 + 99).padStart(9, '0')),
        models: column(() => [packs[1]?.models?.[0]?.id ?? '']),
        year: column((i) => 1900 + (i % 60)),
      },
    },
  };
}
const large = largePack(100_000);
const largeText = JSON.stringify(large);
const largeKnowledge = compile([large]);

export const benchmarks: Benchmark[] = [
  { name: 'collect: a market page (in jsdom, slower than a browser)', run: () => collect(document) },
  { name: 'settle: its harvest', run: () => settle(harvest, url) },
  { name: 'audit: its listing, trade pack and club pack', run: () => audit(listing, knowledge, { asOf }) },
  { name: 'audit: the same, 100,000 serial runs', run: () => audit(listing, largeKnowledge, { asOf }) },
  { name: 'parse: the trade pack', run: () => parsePack(tradeText) },
  { name: 'parse: a pack of 100,000 serial runs', run: () => parsePack(largeText) },
  { name: 'compile: trade pack and club pack', run: () => compile(packs) },
  { name: 'compile: a pack of 100,000 serial runs', run: () => compile([large]) },
  { name: 'serials: one number among 100,000 runs', run: () => largeKnowledge.serials.find('X005012345') },
];
