import { describe, expect, it } from 'vitest';
import { answerByHand } from '../../../src/session/answer';
import { answerToEnquiry } from '../../../src/session/enquiry';
import type { Seen, SeenValue } from '../../../src/session/seen';
import { writtenAnswer } from '../../../src/session/written-answer';
import { likelyTexts } from '../../../src/text/catalogue/likely';
import { CLUB, knowledgeFrom, TRADE } from './known-packs';

const trade = knowledgeFrom(TRADE);
const both = knowledgeFrom(TRADE, CLUB);
const DAY = '2026-06-01';
const seen = (...said: [string, SeenValue][]): Seen => new Map(said.map(([id, value]) => [`trade/${id}`, value]));
function answer(of: Seen, knowledge = trade, more: { serial?: string; text?: string } = {}) {
  const told = answerByHand({ what: 'sewing machine', ...more }, DAY, knowledge, of);
  if (!told.ok) throw new Error(told.problem);
  return told;
}
const shuttle = seen(['mechanism', 'vibrating-shuttle'], ['size', 'full-size'], ['drive', 'treadle']);

describe('the answer about a machine that somebody has before them', () => {
  it('has words for what was seen, in the order in which it was said', () => {
    const { seen: words } = answer(seen(['size', 'full-size'], ['drop-feed', false], ['shank', null]));
    expect(words.map(({ name, value, text }) => [name, value, text])).toEqual([
      ['size', 'full-size', 'full size'],
      ['drop feed', false, null],
      ['shank', null, null],
    ]);
  });

  it('makes nothing of what no pack knows any more, and still shows it to be taken back', () => {
    const gone = seen(['size', 'gigantic'], ['lost', 'x'], ['drop-feed', 'maybe']);
    const told = answer(gone);
    expect(told.audit.likely).toEqual(answer(seen()).audit.likely);
    expect(told.seen.map(({ attribute }) => attribute)).toEqual(['trade/size', 'trade/lost', 'trade/drop-feed']);
  });

  it('explains every term that a question or what follows speaks of', () => {
    const { audit, words } = answer(shuttle);
    const named = [...audit.nextEvidence, ...audit.likely.flatMap(({ follows }) => follows)];
    expect(named.length).toBeGreaterThan(5);
    for (const { attribute } of named) expect([attribute, words.terms.get(attribute)?.explain]).not.toContain(null);
  });

  it('has a question of its own for everything that is asked by choosing', () => {
    const { audit, words } = answer(seen());
    const asked = audit.nextEvidence.filter(({ options }) => options.length > 0);
    expect(asked.length).toBeGreaterThan(2);
    for (const { attribute } of asked) expect(words.terms.get(attribute)?.question).toMatch(/\?$/);
  });

  it('speaks of the kind: what it is for, what fits, what to mind', () => {
    const { kind, audit } = answer(shuttle);
    expect(kind?.good.length).toBeGreaterThan(0);
    expect(kind?.fits.join()).toContain('low-shank feet');
    expect(kind?.mind.map(({ words }) => words)).toContain('industrial');
    // What the kind calls for stands among the audit's own notes, once it is as good as sure.
    expect(audit.findings.map(({ text }) => text).join()).toContain('Cast iron is heavy');
  });

  it('says of a brand-free kind nothing that a club says of its makers', () => {
    expect(answer(shuttle, both).kind?.mind).toEqual(answer(shuttle).kind?.mind);
  });

  it('weighs no word twice', () => {
    const { kind } = answer(seen(), both, { serial: 'KD 439114', text: 'Grindlewade' });
    const words = kind?.mind.map((each) => each.words) ?? [];
    expect(words).toContain('industrial');
    expect(new Set(words).size).toBe(words.length);
  });

  it('says no caution twice', () => {
    const { audit, kind } = answer(shuttle);
    const found = audit.findings.map(({ text }) => text);
    expect(kind?.cautions.filter((text) => found.includes(text))).toEqual([]);
  });
});

describe('the written answer', () => {
  it('says what it is, how sure that is, why, what follows, from where, and what to ask', () => {
    const text = writtenAnswer(answer(shuttle), null, DAY);
    const lines = ['Full size, cast iron, vibrating shuttle', likelyTexts.kinds.type, '- size: full size'];
    for (const each of [...lines, 'What speaks for it:', '- bobbin: long bobbin', 'The trade, without a brand', DAY])
      expect(text).toContain(each);
    expect(text).not.toMatch(/undefined|null|NaN|\n\n\n/);
  });

  it('says that it can’t be told, and between which', () => {
    const text = writtenAnswer(answer(seen()), null, DAY);
    expect(text).toContain(likelyTexts.open);
    expect(text).not.toContain('What follows');
  });

  it('holds the number in the same answer', () => {
    const serial = 'KD 439114';
    const told = answer(seen(), both, { serial, text: 'Grindlewade' });
    const text = writtenAnswer(told, answerToEnquiry(serial, null, both), DAY);
    for (const each of ['Grindlewade Haddercombe', 'KD433001 to KD441000', '1955', 'Brindfold dispatch cards'])
      expect(text).toContain(each);
    expect(writtenAnswer(told, answerToEnquiry('QQ 1', null, both), DAY)).toContain('QQ1, is in none');
  });
});
