import { describe, expect, it } from 'vitest';
import { saying, short } from './support/reading';

const zigzags = (text: string): string[] =>
  short(saying(text).wordings.filter(({ entry }) => entry.id === 'says-zigzag'));

describe('lists of words to be found by', () => {
  it.each([
    'Straight stitch.\ntags: zigzag, overlock, free arm',
    'Straight stitch.\nKeywords – industrial zigzag leather\nmore zigzag',
    'Straight stitch. #zigzag #vintage',
    'Straight stitch.\n\nsewing zigzag vintage upholstery leather retro',
    'Gut.\nSuchbegriffe: zigzag, Overlock',
    'Mots-clés : zigzag, cuir',
    'mots cles : zigzag, cuir',
    'Straight stitch. Tags: zigzag free arm leather',
    'Straight stitch. Popular searches: zigzag, free arm.',
    'Straight stitch. Tags old zigzag treadle retro',
    'Straight stitch. zigzag industrial free arm treadle vintage antique sewing',
  ])('claim nothing: %j', (text) => {
    expect(zigzags(text).length).toBeGreaterThan(0);
    expect(zigzags(text).filter((claim) => !claim.endsWith('(other)'))).toEqual([]);
  });

  it.each([
    'Tags: old\n\nIt does zigzag.',
    'Straight and zigzag, for leather and upholstery.',
    'Cast iron\nzigzag stitch class 15 bobbin low shank',
  ])('end where a sentence speaks: %j', (text) => expect(zigzags(text)).toEqual([expect.not.stringMatching(/\(/)]));
});

describe('what is on sale besides', () => {
  it.each([
    'In stock: zigzag',
    'Straight stitch.\nIn stock too: zigzag, free arm',
    'Straight stitch. More items of mine: zigzag, free arm.',
    'Gut.\nWeitere Artikel: zigzag',
    'Autres annonces : zigzag, cuir',
  ])('stands behind its heading: %j', (text) => expect(zigzags(text)).toEqual(['zigzag (other)']));

  it.each(['In stock it has zigzag.', 'Also available: feet.\nIt does zigzag.', 'Also in good order: zigzag'])(
    'not here: %j',
    (text) => expect(zigzags(text)).toEqual(['zigzag']),
  );
});
