import { readdirSync, readFileSync } from 'node:fs';
import { JSDOM } from 'jsdom';
import { describe, expect, it } from 'vitest';
import { collect } from '../../../src/listing/collect';
import { compile } from '../../../src/pack/compile';
import { parsePack } from '../../../src/pack/parse';
import { answerTo } from '../../../src/session/page-answer';
import { harvestFrom } from '../../../src/session/reading';
import { sampleHarvest } from './sample-harvest';

const MARKET = 'fixtures/market';
const pages = readdirSync(MARKET, { withFileTypes: true }).flatMap((entry) =>
  entry.isDirectory() ? [entry.name] : [],
);
const packs = ['src/pack/shipped/trade.json', 'fixtures/packs/grindlewade-circle.json'].map((path) => {
  const { pack } = parsePack(readFileSync(path, 'utf8'));
  if (!pack) throw new Error(`${path} is not in order`);
  return pack;
});
const knowledge = compile(packs);

function harvestOf(name: string) {
  const url = `https://market.example/${name}/page.html`;
  const { window } = new JSDOM(readFileSync(`${MARKET}/${name}/page.html`, 'utf8'), { url });
  return collect(window.document);
}

describe('the answer to a harvest', () => {
  it.each(pages)('is taken from what the reader really brings, unchanged by the check: %s', (name) => {
    const harvest = harvestOf(name);
    expect(harvestFrom(structuredClone(harvest))).toEqual(harvest);
  });

  it.each(pages)('has words for all that the audit names: %s', (name) => {
    const answer = answerTo(harvestOf(name), '2026-06-01', knowledge);
    if (!answer.ok) throw new Error(answer.problem);
    const { audit, words } = answer;
    const named = [audit.serial, ...audit.serials].flatMap(({ runs }) => runs.flatMap(({ models }) => models));
    for (const model of named) expect(words.models.get(model)).toBeTruthy();
    for (const { known } of audit.findings) for (const { pack } of known) expect(words.packs.has(pack)).toBe(true);
    for (const { id } of audit.packs) expect(words.packs.has(id)).toBe(true);
    // It travels from the engine's thread to the panel.
    expect(structuredClone(answer)).toEqual(answer);
  });

  it('explains the attributes that findings speak of', () => {
    const answer = answerTo(harvestOf('wendelow-industrial-zigzag'), '2026-06-01', knowledge);
    if (!answer.ok) throw new Error(answer.problem);
    expect(answer.words.terms.size).toBeGreaterThan(0);
    for (const term of answer.words.terms.values()) expect(term.explain ?? term.where ?? term.see).toBeTruthy();
  });

  it('tells a mistake of ours instead of throwing it', () => {
    const answer = answerTo(sampleHarvest(), '2026-06-01', null as never);
    expect(answer.ok).toBe(false);
    expect(answer.ok ? '' : answer.problem).toContain('Error');
  });
});
