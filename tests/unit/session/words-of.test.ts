import { describe, expect, it } from 'vitest';
import { answerToDraft } from '../../../src/session/answer';
import { originOf } from '../../../src/session/pack-origin';
import { CLUB, knowledgeFrom, TRADE } from './known-packs';

const knowledge = knowledgeFrom(TRADE, CLUB);
const draft = { title: 'Old sewing machine, cast iron, treadle', description: 'Motor runs. Collect.' };
function wordsOf(shipped: ReadonlySet<string>) {
  const answer = answerToDraft(draft, '2026-06-01', knowledge, new Map(), shipped);
  if (!answer.ok) throw new Error(answer.problem);
  return answer;
}

describe('the words for what an audit names', () => {
  it('say of each pack whether it came with the program', () => {
    const { packs } = wordsOf(new Set(['trade'])).words;
    expect([...packs.values()].map(({ id, shipped }) => `${id} ${shipped}`)).toEqual([
      'trade true',
      'grindlewade-circle false',
    ]);
    expect([...packs.values()].map(originOf)).toEqual(['came with Bedplate', 'unsealed']);
  });

  it('explain words of the trade in what is asked and said', () => {
    const { words, audit } = wordsOf(new Set());
    const shown = [...audit.nextEvidence.map(({ ask }) => ask), ...audit.likely.map(({ label }) => label)];
    const explained = shown.flatMap((text) =>
      (words.spots.get(text) ?? []).map(({ start, end }) => text.slice(start, end)),
    );
    expect(explained.length).toBeGreaterThan(0);
    for (const [text, spots] of words.spots)
      for (const { start, end, explain } of spots) {
        expect(text.slice(start, end)).not.toBe('');
        expect(explain).not.toBe('');
      }
  });
});
