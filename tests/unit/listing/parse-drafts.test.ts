import { describe, expect, it } from 'vitest';
import { parseDrafts } from '../../../src/listing/parse-drafts';

describe('parseDrafts', () => {
  it('takes one draft or a list of them', () => {
    expect(parseDrafts('{"title":"Hand crank"}')).toEqual([{ title: 'Hand crank' }]);
    expect(parseDrafts('\ufeff[{"id":"a","photos":["x.jpg"]},{}]')).toEqual([{ id: 'a', photos: ['x.jpg'] }, {}]);
  });

  it.each([
    ['{', 'The draft is not JSON.'],
    ['[]', 'The list holds no draft.'],
    ['5', 'A draft is an object with a title and a description.'],
    ['[{}, null]', 'Draft 2: A draft is an object with a title and a description.'],
    ['{"titel":"x"}', 'Unknown key "titel".'],
    ['[{"price\\nText":"x"}]', 'Draft 1: Unknown key "price Text".'],
    ['{"title":5}', '"title" must be text.'],
    ['{"photos":"x.jpg"}', '"photos" must be a list of texts.'],
    ['{"photos":[5]}', '"photos" must be a list of texts.'],
    [`[${'{},'.repeat(10_000)}{}]`, 'The list holds more than 10000 drafts.'],
  ])('%j: one line', (json, line) => {
    expect(parseDrafts(json)).toBe(line);
  });

  it('is not led astray by names of objects', () => {
    expect(parseDrafts('{"__proto__":{"title":"x"}}')).toBe('Unknown key "__proto__".');
  });
});
