// @vitest-environment jsdom
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Pack } from '../../../src/pack/schema/index';
import { outlineTexts as texts } from '../../../src/text/catalogue/outline';
import { hasDrawings } from '../../../src/view/outline/drawings';
import { DRAWN, OptionDrawing } from '../../../src/view/outline/OptionDrawing';
import { OutlineDrawing } from '../../../src/view/outline/OutlineDrawing';
import { ringOf } from '../../../src/view/outline/places';
import { stage } from './rendered';

const { root, show, part } = stage();
const packs = ['src/pack/shipped/trade.json', 'fixtures/packs/platen-circle.json'].map(
  (path) => JSON.parse(readFileSync(path, 'utf8')) as Pack,
);

describe('the outline drawing', () => {
  it('marks a place by a ring and an arrow, and says which', () => {
    show(<OutlineDrawing outline="sewing-machine" place="handwheel" />);
    expect(part('mark')?.querySelectorAll('ellipse').length).toBeGreaterThan(0);
    expect(root.querySelector('svg')?.getAttribute('aria-label')).toContain(texts.places.handwheel);
  });

  it.each([null, 'nowhere', 'constructor', 'keyboard'])('marks nothing that it doesn’t show: %s', (place) => {
    show(<OutlineDrawing outline="sewing-machine" place={place} />);
    expect(part('mark')).toBeNull();
    expect(root.querySelector('svg')?.getAttribute('aria-label')).toBe(texts.drawing('a sewing machine'));
  });

  it.each(packs.map((pack) => [pack.about.id, pack] as const))(
    'shows every place that the pack names: %s',
    (_, pack) => {
      const { outline } = pack.about.covers;
      if (!outline) throw new Error('no outline');
      const places = (pack.attributes ?? []).flatMap(({ place }) => place ?? []);
      expect(places.length).toBeGreaterThan(5);
      expect(places.filter((place) => ringOf(outline, place) === null)).toEqual([]);
    },
  );

  it('keeps every mark within the drawing', () => {
    for (const [outline, place] of Object.keys(texts.places).flatMap((each) => [
      ['sewing-machine', each] as const,
      ['typewriter', each] as const,
    ])) {
      const ring = ringOf(outline, place);
      if (!ring) continue;
      expect([place, ring.x - ring.rx >= 0, ring.x + ring.rx <= 320]).toEqual([place, true, true]);
      expect([place, ring.y - ring.ry >= 0, ring.y + ring.ry <= 200]).toEqual([place, true, true]);
    }
  });
});

describe('the small drawing of an answer', () => {
  const drawn = (attribute: string, value: string | boolean) => {
    show(<OptionDrawing outline="sewing-machine" attribute={attribute} value={value} />);
    return root.querySelector('svg')?.getAttribute('data-drawn');
  };

  it('is its own where there is one, else a blank tag', () => {
    expect(drawn('trade/loading', 'front')).toBe('own');
    for (const value of ['constructor', 'somewhere', true]) expect(drawn('trade/loading', value)).toBe('tag');
    expect(drawn('trade/toString', 'length')).toBe('tag');
  });

  it('differs from answer to answer', () => {
    const loading = packs[0]?.attributes?.find(({ id }) => id === 'loading');
    if (loading?.kind !== 'choice') throw new Error('no loading');
    const pictures = loading.values.map(({ id }) => {
      expect([id, drawn('trade/loading', id)]).toEqual([id, 'own']);
      return root.innerHTML;
    });
    expect(new Set(pictures).size).toBe(pictures.length);
    expect(pictures.length).toBeGreaterThan(3);
  });

  it('is left out where no answer to the question has one', () => {
    expect(hasDrawings('sewing-machine', 'trade/loading')).toBe(true);
    expect(hasDrawings('sewing-machine', 'trade/shank')).toBe(false);
    expect(hasDrawings('typewriter', 'p/loading')).toBe(false);
    expect(hasDrawings(null, 'trade/loading')).toBe(false);
    // What is known of the drawings before they are fetched is what there is.
    for (const outline of ['sewing-machine', 'typewriter'] as const)
      expect(Object.keys(DRAWN[outline]).filter((each) => !hasDrawings(outline, each))).toEqual([]);
    const all = packs.flatMap(({ attributes = [] }) => attributes.map(({ id }) => id));
    for (const outline of ['sewing-machine', 'typewriter'] as const)
      for (const id of all) expect([id, hasDrawings(outline, id)]).toEqual([id, Object.hasOwn(DRAWN[outline], id)]);
  });
});
