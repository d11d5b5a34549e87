import { readdirSync, readFileSync } from 'node:fs';
import { JSDOM } from 'jsdom';
import { describe, expect, it } from 'vitest';
import { collect } from '../../../src/listing/collect';
import { compile } from '../../../src/pack/compile';
import { parsePack } from '../../../src/pack/parse';
import { answerTo } from '../../../src/session/page-answer';
import { pickAnswer, pickName } from '../../../src/session/picks';
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

  it('is made with the reading that the user has picked, all of it', () => {
    const harvest = harvestOf('haddercombe-price-clash');
    const told = (value: string | null) => {
      const seen = new Map(value === null ? [] : [[pickName('price'), pickAnswer({ how: 'picked', value })]]);
      const answer = answerTo(harvest, '2026-06-01', knowledge, seen);
      if (!answer.ok) throw new Error(answer.problem);
      return answer;
    };
    const conflict = ({ audit }: ReturnType<typeof told>) =>
      audit.findings.some(({ id }) => id === 'source-conflict:price');
    const before = told(null);
    expect([before.audit.price.standing, conflict(before), before.audit.listing.price?.amount]).toEqual([
      'within',
      true,
      '450.00',
    ]);
    const after = told('45.00 GBP');
    expect([after.audit.price.standing, conflict(after), after.audit.listing.price?.amount]).toEqual([
      'below',
      false,
      '45.00',
    ]);
    expect(after.audit.listing.fields.price).toMatchObject({ source: 'json-ld', confidence: 1, byUser: 'picked' });
    // It is no feature of the machine that was seen.
    expect([after.seen, after.lapsed]).toEqual([[], []]);
    const gone = told('£44');
    expect(gone.audit).toEqual(before.audit);
    expect(gone.lapsed).toEqual([{ field: 'price', value: '£44', why: 'gone' }]);
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
