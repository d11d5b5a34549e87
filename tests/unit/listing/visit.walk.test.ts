import { describe, expect, it } from 'vitest';
import { seeing } from '../../../src/listing/collect';
import { readingOf } from '../../../src/listing/page/reading';
import { atOnce, inSlices } from '../../../src/listing/slices';
import { fromPage } from '../../../src/listing/sources/page';
import { seenLines } from '../../../src/listing/visit/lines';
import { largest } from '../../../src/listing/visit/pictures';
import type { Sight } from '../../../src/listing/visit/sight';
import { trimmed } from '../../../src/listing/visit/trim';
import { walk } from '../../../src/listing/visit/walk';

interface Made {
  tag: string;
  text?: string;
  children: Made[];
  parent: Made | null;
  at: number;
}

const make = (tag: string, children: Made[] = [], text?: string): Made => {
  const node: Made = { tag, children, parent: null, at: 0, ...(text === undefined ? {} : { text }) };
  for (const [at, child] of children.entries()) Object.assign(child, { parent: node, at });
  return node;
};

/** A way of looking at a tree of plain objects: deeper than a parser would build it in reasonable time. */
const sightOf = (root: Made): Sight => {
  const of = (node: Node | Element) => node as unknown as Made;
  const as = (node: Made | null | undefined) => (node ?? null) as unknown as Node | null;
  return {
    root: as(root) as Element,
    nodeType: (node) => (of(node).text === undefined ? 1 : 3),
    firstChild: (node) => as(of(node).children[0]),
    nextSibling: (node) => as(of(node).parent?.children[of(node).at + 1]),
    parent: (node) => as(of(node).parent),
    data: (node) => of(node).text ?? '',
    textContent: () => '',
    tag: (element) => of(element).tag,
    attribute: () => null,
    hasAttributes: () => false,
    attributeNames: () => [],
    select: () => [],
    shadow: () => null,
    templateContent: () => null,
    frameDocument: () => null,
    before: () => false,
    address: '',
    base: '',
    shown: () => true,
    style: () => '',
  };
};

describe('walk', () => {
  it('goes down 100,000 levels without running out of stack', () => {
    let tree = make('div', [
      make('h1', [make('#text', [], 'Deep machine')]),
      make('p', [make('#text', [], 'For £40')]),
    ]);
    for (let level = 0; level < 100_000; level++) tree = make(level % 3 ? 'section' : 'li', [tree]);
    const sight = sightOf(tree);
    const { lines, boxes } = atOnce(walk(sight));
    expect(boxes).toHaveLength(100_003);
    const seen = atOnce(seenLines(sight, lines)).lines;
    expect(seen.map(({ text }) => text)).toEqual(['Deep machine', 'For £40']);
    const { page } = atOnce(trimmed({ lines: seen, boxes, pictures: [], times: [] }, 0, 100_000));
    expect(page.boxes.length).toBeLessThanOrEqual(100);
    expect(readingOf(page).lines).toHaveLength(2);
    expect(
      fromPage(page, { windowTitle: '', siteName: '', titles: [], told: '', slug: '', language: null }).candidates.map(
        ({ value }) => value,
      ),
    ).toContain('For £40');
  });
});

describe('a page of 100,000 nodes', () => {
  const card = (at: number) =>
    make('div', [
      make('a', [make('h3', [make('#text', [], `Treadle ${at} in oak`)])]),
      make('#text', [], '\n  '),
      make('p', [make('span', [make('#text', [], `£${at}`)]), make('#text', [], ' or offers')]),
    ]);
  const tree = make('html', [
    make('body', [
      make('h1', [make('#text', [], 'Treadle 417 in oak')]),
      ...Array.from({ length: 11_000 }, (_, at) => card(at)),
    ]),
  ]);

  /** A way of looking that counts what it is asked. */
  const counting = () => {
    const sight = sightOf(tree);
    const counted = { asked: 0 };
    for (const [name, ask] of Object.entries(sight)) {
      if (typeof ask !== 'function') continue;
      Object.assign(sight, {
        [name]: (...given: unknown[]) => {
          counted.asked++;
          return (ask as (...given: unknown[]) => unknown)(...given);
        },
      });
    }
    return { sight, counted };
  };

  it('is read in steps, none of which asks much of it', () => {
    const { sight, counted } = counting();
    const reading = seeing(sight);
    let steps = 0;
    let most = 0;
    let whole = 0;
    for (let step = reading.next(); !step.done; step = reading.next()) {
      steps++;
      whole += counted.asked;
      most = Math.max(most, counted.asked);
      counted.asked = 0;
    }
    expect(whole).toBeGreaterThan(300_000);
    expect(steps).toBeGreaterThan(500);
    // A hundredth of the whole, and more than a step of the walk: 400 nodes with at most six questions about each.
    expect(most).toBeLessThan(3000);
  });

  it('says the same in steps as at once', async () => {
    const whole = atOnce(seeing(sightOf(tree)));
    expect(whole.page.lines.length).toBeGreaterThan(1000);
    let pauses = 0;
    const inParts = await inSlices(seeing(sightOf(tree)), { slice: 0, pause: async () => pauses++ });
    expect(pauses).toBeGreaterThan(500);
    expect(inParts).toEqual(whole);
  });
});

describe('the largest picture of a srcset', () => {
  it.each([
    ['a.jpg', 'a.jpg'],
    ['a.jpg 1x, b.jpg 2x', 'b.jpg'],
    ['a.jpg 1600w,\n b.jpg 400w', 'a.jpg'],
    ['/x,y/a.jpg 1x,  /x,y/b.jpg 1.5x ', '/x,y/b.jpg'],
    ['', null],
    [' , ,', null],
  ])('%j', (srcset, address) => {
    expect(largest(srcset)).toBe(address);
  });
});
