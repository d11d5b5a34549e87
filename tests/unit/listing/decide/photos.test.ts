import { describe, expect, it } from 'vitest';
import { photoKey, settlePhotos } from '../../../../src/listing/decide/photos';
import type { Candidate, SourceName } from '../../../../src/listing/types';

const photo = (value: string, source: SourceName, weight: number): Candidate => ({
  field: 'photo',
  value: `https://i.example/${value}`,
  source,
  weight,
});
const told = (value: string) => photo(value, 'json-ld', 0.9);
const shown = (value: string) => photo(value, 'page', 0.6);
const settled = (...photos: Candidate[]) => settlePhotos(photos)?.values.map((value) => value.slice(18)) ?? [];

describe('one photograph', () => {
  it.each([
    ['a-1_large.jpg', 'a-1_thumb.jpg'],
    ['a_1_1024x1024.jpg', 'a_1_600x600.jpg?v=17'],
    ['thumbs/7.jpg', 'large/7.webp'],
    ['9@2x.png', '9.png'],
    ['x/w640/9.jpg', 'x/w1200/9.jpg'],
  ])('%s is %s', (one, other) => {
    expect(photoKey(`https://i.example/${one}`)).toBe(photoKey(`https://i.example/${other}`));
  });

  it.each([
    ['a-1.jpg', 'a-2.jpg'],
    ['1/photo.jpg', '2/photo.jpg'],
    ['image.php?id=1', 'image.php?id=2'],
    ['aa11?rule=x', 'aa12?rule=x'],
  ])('%s is not %s', (one, other) => {
    expect(photoKey(`https://i.example/${one}`)).not.toBe(photoKey(`https://i.example/${other}`));
  });
});

describe('the photographs of an advert', () => {
  it('are those told of and those shown, each once', () => {
    expect(settled(told('1_big.jpg'), shown('1_s.jpg'), shown('2_s.jpg'))).toEqual(['1_big.jpg', '2_s.jpg']);
  });

  it('are the larger set where the two have no name in common', () => {
    expect(settled(told('cover.jpg'), shown('1.jpg'), shown('2.jpg'))).toEqual(['1.jpg', '2.jpg']);
    expect(settled(told('a.jpg'), told('b.jpg'), shown('1.jpg'), shown('2.jpg'))).toEqual(['a.jpg', 'b.jpg']);
    expect(settled(told('a.jpg'))).toEqual(['a.jpg']);
    expect(settled()).toEqual([]);
  });
});
