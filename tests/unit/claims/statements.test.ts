import { describe, expect, it } from 'vitest';
import { textPart } from '../../../src/claims/part-text';

const cut = (text: string): string[] =>
  textPart('description', text).clauses.map(({ start, end }) => text.slice(start, end));

const RUN = 'and mum made every curtain in the house with it until her eyes went last winter';

describe('a text that runs on without stops', () => {
  it.each([
    ['selling my old machine', `its a heavy one ${RUN}`],
    ['comes in a suitcase', `it does zigzag ${RUN}`],
    ['works a treat', `i have had it for years ${RUN}`],
    ['no room here', `the number is KD372118 ${RUN}`],
    ['wheel is solid', `there are four bobbins ${RUN}`],
    ['good as a rock', `ive got the book ${RUN}`],
    ['it runs lovely', `weighs 12.5 kg ${RUN}`],
    ['built like a bridge', `takes long bobbins ${RUN}`],
  ])('is cut behind “%s”', (first, second) => {
    expect(cut(`${first} ${second}`)).toEqual([first, second]);
  });

  it.each([
    `she told me its a heavy one ${RUN}`,
    `i always think it does zigzag ${RUN}`,
    `the old man swore it was the first ${RUN}`,
    `the lid weighs 12.5 kg ${RUN}`,
    `a neighbour who says it has the book ${RUN}`,
    `kept with its good cover ${RUN}`,
  ])('is one statement: %s', (text) => expect(cut(text)).toEqual([text]));

  it('is cut alike with signs before it', () => {
    const short = 'works a treat i have had it for years and mum made curtains with it every winter';
    expect(cut(`🧵 ${short}`)).toHaveLength(cut(short).length);
  });

  it('is not cut where it is short or has its stops', () => {
    expect(cut('comes in a suitcase it does zigzag')).toHaveLength(1);
    expect(cut('comes in a suitcase it does zigzag. And mum made every curtain in the house with it.')).toHaveLength(2);
  });
});
