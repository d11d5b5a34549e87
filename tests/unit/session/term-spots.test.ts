import { describe, expect, it } from 'vitest';
import { termSpots } from '../../../src/session/term-spots';
import { CLUB, knowledgeFrom, TRADE } from './known-packs';

const knowledge = knowledgeFrom(TRADE, CLUB);
const speaking = new Set(['trade']);
const wordsIn = (text: string, packs = speaking) =>
  (termSpots([text], knowledge, packs).get(text) ?? []).map(({ start, end }) => text.slice(start, end));

describe('words of the trade in a text', () => {
  it('are found with their explanation, in the plural and with a capital letter too', () => {
    const text = 'Feed dogs move the cloth; shuttles carry the thread.';
    expect(wordsIn(text)).toEqual(['Feed dogs', 'shuttles']);
    expect(termSpots([text], knowledge, speaking).get(text)?.[0]?.explain).toBe(
      'The small teeth under the foot that move the cloth.',
    );
  });

  it('are the longer one where two begin at the same place, and each once', () => {
    expect(wordsIn('a bobbin case, and its bobbin winder; another bobbin case')).toEqual([
      'bobbin case',
      'bobbin winder',
    ]);
  });

  it('are whole words', () => {
    expect(wordsIn('a warm army of cases in the archbishopric')).toEqual(['cases']);
  });

  it('are those of packs that spoke', () => {
    expect(wordsIn('feed dogs', new Set(['grindlewade']))).toEqual([]);
  });

  it('leave out texts without any', () => {
    expect([...termSpots(['nothing here', ''], knowledge, speaking).keys()]).toEqual([]);
  });
});
