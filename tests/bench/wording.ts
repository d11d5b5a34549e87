import nlp from 'compromise';
import AhoCorasick from 'modern-ahocorasick';
import { hitsIn } from '../../src/claims/hits';
import { misspeltNames } from '../../src/claims/misspelt';
import { type TextPart, textPart } from '../../src/claims/part-text';
import { readClaims } from '../../src/claims/read';
import { StanceReader } from '../../src/claims/stance';
import type { Knowledge } from '../../src/pack/knowledge';
import { PackedPhrases, packPhrases } from '../../src/text/packed-phrases';
import { tokenise } from '../../src/text/tokens';
import { inCircle, inTurns } from './in-turns';
import { adverts, knowledge, listings, phrases } from './wording-sample';

// What reading an advert's words costs, beside a plain search for the same phrases and beside a general language library,
// in turns in one run, all of it in one bundle (wording-run.ts). Figures are of this machine, today: the ratios are what
// counts.

const line = (what: string, milliseconds: number): void =>
  console.log(`${`${milliseconds.toFixed(milliseconds < 1 ? 4 : 2)} ms`.padStart(12)}  ${what}`);
const ratio = (what: string, value: number, most: number): void =>
  console.log(`${value.toFixed(3).padStart(12)}  ${what} (goal: at most ${most}; ${value <= most ? 'met' : 'missed'})`);

/** As a pack's phrases lie there. */
function indexOf(list: readonly string[]): PackedPhrases<string> {
  return new PackedPhrases(packPhrases(list.map((phrase, i) => [phrase, i] as const)), (i) => list[i]!);
}

const ENGLISH = new Set(['en']);

/** What the phrases of a text say: tokens, clauses, phrases, triggers, and for each phrase its stance and subject. */
function stancesIn(text: string, known: Knowledge): number {
  const part = textPart('description', text);
  const hits = hitsIn(part, known, ENGLISH);
  const stances = new StanceReader(part, ENGLISH);
  for (const { firstToken, lastToken } of hits) stances.at(firstToken, lastToken);
  return hits.length;
}

const [few, many] = [phrases(10_000), phrases(100_000)];
const [index, largeIndex] = [indexOf(few), indexOf(many)];
const [known, largeKnown] = [knowledge(10_000), knowledge(100_000)];
const plain = new AhoCorasick(few);
const text = inCircle(adverts(2));
const longText = inCircle(adverts(20));
const listing = inCircle(listings(2));
const longListing = inCircle(listings(20));

console.log(`Node ${process.version}; the quickest of 200 short rounds in turns; no text twice in a row\n`);
console.log('An advert of 2 kB against 10,000 phrases');
const one = inTurns({
  search: () => index.search(tokenise(text())),
  plain: () => plain.search(text().toLowerCase()),
  stances: () => stancesIn(text(), known),
  reading: () => readClaims(listing(), known),
  parse: () => nlp(text()),
});
line('tokens and phrases', one.search);
line('tokens, clauses, phrases, stance and subject of each', one.stances);
line('the whole reading: also names, kind, years, weights, serials, what each clause asserts', one.reading);
line('plain search of the same strings (modern-ahocorasick)', one.plain);
line('parse of the same text (compromise)', one.parse);
ratio('phrases / plain search', one.search / one.plain, 5);
ratio('stances / plain search', one.stances / one.plain, 5);
ratio('the whole reading / plain search', one.reading / one.plain, 5);
ratio('stances / parse', one.stances / one.parse, 0.1);
ratio('the whole reading / parse', one.reading / one.parse, 0.1);

console.log('\n100,000 phrases beside 10,000');
const grown = inTurns({
  search: () => index.search(tokenise(text())),
  largeSearch: () => largeIndex.search(tokenise(text())),
  stances: () => stancesIn(text(), known),
  largeStances: () => stancesIn(text(), largeKnown),
  reading: () => readClaims(listing(), known),
  largeReading: () => readClaims(listing(), largeKnown),
});
ratio('phrases', grown.largeSearch / grown.search, 1.3);
ratio('stances', grown.largeStances / grown.stances, 1.3);
ratio('the whole reading', grown.largeReading / grown.reading, 1.3);

console.log('\n20 kB beside 2 kB');
const longer = inTurns({
  search: () => index.search(tokenise(text())),
  longSearch: () => index.search(tokenise(longText())),
  stances: () => stancesIn(text(), known),
  longStances: () => stancesIn(longText(), known),
  reading: () => readClaims(listing(), known),
  longReading: () => readClaims(longListing(), known),
});
ratio('phrases', longer.longSearch / longer.search, 10);
ratio('stances', longer.longStances / longer.stances, 10);
ratio('the whole reading', longer.longReading / longer.reading, 10);

console.log('\nMisspelt names, a part of the whole reading');
const title = textPart('title', 'Grindlewade Cresitter sewing mashine, Wendlow case');
for (const names of [0, 2_000, 10_000]) {
  const named = knowledge(0, names);
  const parts = adverts(2).map((one): TextPart => textPart('description', one));
  const part = inCircle(parts);
  const fuzzy = (one: TextPart): unknown => misspeltNames(one, named, named.names.search(one.tokens), []);
  const { both } = inTurns({ both: () => [fuzzy(title), fuzzy(part())] });
  line(`a misspelt title and 2 kB, against ${named.nameList.length.toLocaleString('en')} names`, both);
}
