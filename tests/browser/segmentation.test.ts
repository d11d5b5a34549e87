import { createHash } from 'node:crypto';
import { resolve } from 'node:path';
import { build } from 'vite';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Driven, Tab } from '../../src/cli/demo/driven';
import { clauses } from '../../src/text/clauses';
import { tokenise } from '../../src/text/tokens';
import { labelled } from '../corpus/labelled';
import { openTestedRoom, type Room } from './support/browser';

/**
 * Words and sentences are cut by our own code, but what a letter, an accent or an emoji is it asks the browser's Unicode
 * tables, which are of other editions than Node's. The same cuts must come out, or offsets would differ.
 */
let room: Room<Driven>;
let tab: Tab;

beforeAll(async () => {
  room = await openTestedRoom({ packs: false });
  tab = await room.browser.openTab(room.market.addressOf('wendelow-industrial-zigzag/page.html'));
  await tab.evaluate(await bundled());
});
afterAll(() => room?.close());

/** Our segmentation as one script that leaves `cut` on the page. */
async function bundled(): Promise<string> {
  const entry = 'virtual:cut';
  const file = (name: string) => JSON.stringify(resolve(`src/text/${name}.ts`));
  const built = await build({
    configFile: false,
    logLevel: 'silent',
    plugins: [
      {
        name: 'cut',
        resolveId: (id) => (id === entry ? `\0${entry}` : null),
        load: (id) =>
          id === `\0${entry}`
            ? `import { tokenise } from ${file('tokens')}; import { clauses } from ${file('clauses')};
               globalThis.cut = ${cut.toString()}; globalThis.parts = { tokenise, clauses };`
            : null,
      },
    ],
    build: { write: false, minify: false, rollupOptions: { input: entry, output: { format: 'iife' } } },
  });
  const output = Array.isArray(built) ? built[0] : built;
  if (!output || !('output' in output)) throw new Error('nothing was built');
  return `${output.output[0].code}\n;0`;
}

type Parts = { tokenise: typeof tokenise; clauses: typeof clauses };

/** All cuts of a text as one line: tokens with what they are, then clauses with their sentences. */
function cut(text: string, parts: Parts): string {
  const tokens = parts.tokenise(text);
  const words = tokens.map(({ kind, start, end, folded }) => `${kind[0]}${start}-${end}${folded}`);
  return `${words.join(' ')} | ${parts
    .clauses(text, tokens)
    .map(({ sentence, start, end }) => `${sentence}:${start}-${end}`)
    .join(' ')}`;
}

const here = (text: string): string => cut(text, { tokenise, clauses });
const there = (texts: string[]): Promise<string[]> =>
  tab.evaluate((list: string[]) => {
    const page = globalThis as unknown as { cut: typeof cut; parts: Parts };
    return list.map((text) => page.cut(text, page.parts));
  }, texts);

const digest = (list: readonly string[]): string => createHash('sha256').update(list.join('\n')).digest('hex');

/** What adverts are written in, and much more; without the blocks of thousands of letters that are all alike. */
const RANGES = [
  [0x20, 0x31ff],
  [0xa000, 0xabff],
  [0xf900, 0xffff],
  [0x1f000, 0x1fbff],
] as const;

describe('our segmentation is the same in the browser as in Node', () => {
  it('on every labelled advert', async () => {
    const texts = labelled('tuned/grindlewade-circle').flatMap(({ draft }) => [
      draft.title ?? '',
      draft.description ?? '',
    ]);
    expect(texts.length).toBeGreaterThan(500);
    expect(digest(await there(texts))).toBe(digest(texts.map(here)));
  });

  it('on the characters that Node knows, between letters, digits and spaces', async () => {
    const known = /^\p{Assigned}$/u;
    const texts: string[] = [];
    for (const [from, to] of RANGES)
      for (let code = from; code <= to; code++) {
        const character = String.fromCodePoint(code);
        if (known.test(character)) texts.push(`a${character}b 1${character}2 ${character} c. D`);
      }
    expect(texts.length).toBeGreaterThan(12_000);
    const [ours, theirs] = [texts.map(here), await there(texts)];
    expect(texts.filter((_, at) => ours[at] !== theirs[at]).map((text) => text.codePointAt(1)!.toString(16))).toEqual(
      [],
    );
  });

  it('and what the browser itself makes of words (UAX 29) is what Node makes of them', async () => {
    const texts = labelled('tuned/grindlewade-circle')
      .slice(0, 100)
      .map(({ draft }) => draft.description ?? '');
    const words = (list: string[]): string[] =>
      list.map((text) =>
        [...new Intl.Segmenter('en', { granularity: 'word' }).segment(text)].map(({ index }) => index).join(),
      );
    expect(await tab.evaluate(words, texts)).toEqual(words(texts));
  });
});
