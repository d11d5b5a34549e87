import { describe, expect, it } from 'vitest';
import { saying } from '../support/reading';

/** What an advert says of the thing as so, besides what its title says. */
function claimed(text: string): string[] {
  const { values, wordings } = saying(text);
  return [...values, ...wordings]
    .filter(({ field, subject, stance, aside }) => {
      return field === 'description' && subject === 'this' && stance === 'says' && !aside;
    })
    .map(({ quote }) => quote.toLowerCase());
}

describe('sentences that say of the thing what it has', () => {
  it.each([
    ['If you push the lever down it does zigzag.', 'zigzag'],
    ['Put it on a table if you can, as it is a free arm.', 'free arm'],
    ['The zigzag works as it should.', 'zigzag'],
    ['Brand new class 66 bobbins are what it takes.', 'class 66 bobbins'],
    ['Built like a tank out of aluminium.', 'aluminium'],
    ['All aluminium, not like modern tat.', 'aluminium'],
    ['Aluminium not plastic.', 'aluminium'],
    ['Aluminium little thing, heavier than it looks.', 'aluminium'],
    ['Straight and zigzag both crisp as you like.', 'zigzag'],
    ['Zigzag swings beautifully.', 'zigzag'],
    ['Takes class 66 bobins you can get anywhere.', 'class 66'],
    ['Light to lift with its aluminium body.', 'aluminium body'],
    ['And there is a free arm for sleeves.', 'free arm'],
  ])('%s', (text, quote) => expect(claimed(text).join(' | ')).toContain(quote));

  it.each([
    ['One was a zigzag thing from abroad.', 'zigzag'],
    ['Used for zigzag overalls in the war.', 'zigzag'],
    ['Whether you can get it to zigzag, I wonder.', 'zigzag'],
  ])('but not: %s', (text, quote) => expect(claimed(text).join(' | ')).not.toContain(quote));
});
