import { JSDOM } from 'jsdom';
import { collect } from '../../src/listing/collect';
import { settle } from '../../src/listing/settle';
import type { Benchmark } from './benchmark';

const ADVERT =
  '<main><h1>Hand crank with a key</h1><p class="price">£40</p><dl><dt>Condition</dt><dd>Used</dd></dl><h2>Description</h2><p>It came out of a loft.</p></main>';
const FILLER = '<div class="filler"><span>word</span> <b>other</b></div>';

/** Parsing is the command line's and the browser's, not ours: done once, outside the measured time. */
function once<T>(make: () => T): () => T {
  let made: { value: T } | null = null;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

export const benchmarks: Benchmark[] = [150, 16_700].flatMap((count) => {
  const document = once(
    () => new JSDOM(`${FILLER.repeat(count / 2)}${ADVERT}${FILLER.repeat(count / 2)}`).window.document,
  );
  const harvest = once(() => collect(document()));
  const size = `of a page of ${(count * 6).toLocaleString('en')} nodes, in jsdom`;
  return [
    { name: `reading: the visit ${size}`, run: () => collect(document()).page.lines.length },
    { name: `reading: the judgement ${size}`, run: () => settle(harvest()).title.length },
  ];
});
