import { describe, expect, it } from 'vitest';
import { askedThings, chosenThing, thingIn } from '../../../src/session/asked-things';
import { openText } from '../../../src/session/open-text';
import { cardOf } from '../../../src/session/pack-card';
import { shelved } from '../../../src/session/packs';

const pack = (id: string, change: object = {}, about: object = {}) => ({
  schema: 1,
  about: {
    ...{ id, title: id, edition: 1, licence: 'CC0', language: 'en' },
    covers: { thing: `old ${id}`, words: [{ text: `alte ${id}`, lang: 'de' }, id], first: 'part' },
    ...about,
  },
  attributes: [{ id: 'part', kind: 'yes-no', label: 'part' }],
  ...change,
});
function shelfOf(packs: object[], off: string[] = []) {
  const kept = packs.map((each) => JSON.parse(JSON.stringify(each)) as { about: { id: string } });
  const installed = kept.map((each) => ({
    kept: { id: each.about.id, edition: 1, installedAt: '' },
    ...openText(JSON.stringify(each)),
  }));
  return shelved([], installed, new Map(off.map((id) => [id, false]))).map(cardOf);
}

describe('what can be asked about', () => {
  it('is what packs that are on ask about by themselves', () => {
    const shelf = shelfOf(
      [pack('camera'), pack('clock'), pack('lens', {}, { extends: 'camera' }), pack('radio', { attributes: [] })],
      ['clock'],
    );
    expect(askedThings(shelf)).toEqual([
      { pack: 'camera', label: 'old camera', word: 'camera', outline: null, first: 'camera/part' },
    ]);
  });

  it('is chosen by itself where there is one, and by the user where there are several', () => {
    const one = askedThings(shelfOf([pack('camera')]));
    const two = askedThings(shelfOf([pack('camera'), pack('clock')]));
    expect(chosenThing(one, null)?.pack).toBe('camera');
    expect(chosenThing(two, null)).toBeNull();
    expect(chosenThing(two, 'clock')?.pack).toBe('clock');
    expect(chosenThing(two, 'gone')).toBeNull();
    expect(chosenThing(one, 'gone')?.pack).toBe('camera');
  });

  it('is told by words in which exactly one of them stands', () => {
    const two = askedThings(shelfOf([pack('camera'), pack('clock')]));
    expect(thingIn('Grandmother’s CAMERA, works', two)?.pack).toBe('camera');
    expect(thingIn('a camera and a clock', two)).toBeNull();
    expect(thingIn('something old', two)).toBeNull();
  });
});
