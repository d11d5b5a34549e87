import { hitsOver } from './hits';
import { hasNameCapital, type TextPart, writtenAt } from './part-text';
import type { PartReading } from './values';

/** Words for the thing itself, and words that say nothing of what is weighed. Folded; English, Dutch, German, French. */
export const OF_THE_THING: ReadonlySet<string> = new Set(
  `
  all told it its it's she he they i me machine head which that this these and but so is was are at in on the a an of to by
  with without for as itself alone only just surprisingly age lightweight total actually really complete altogether also one iron body thing
  yet beast lump brute monster workhorse chunk slab dead whopping great currently still heavy light solid hefty approx approximately about around circa ca nearly almost roughly
  some full size weight wt weights scale scales kitchen bathroom luggage reads read shows says said come comes tips
  tip good real mere proper properly small compact bare measured weighed put make makes made my your our aluminium aluminum
  alloy metal cast steel straight stitch zigzag three quarter sewing domestic not no lightweight portable quite very
  under over well own has have lighter heavier than others other aussi or exact be precise ton tonne tonnes feather
  nothing more less rather pourtant que seulement tout rond quand meme nur ganze auch weegt gewicht eigengewicht stuck zware ze zij hij
  het de een en op van naaimachine hoofd kop gietijzer zonder ongeveer slechts lift carry yes bit little bloody damn
  honest exactly precisely sie es er maschine kopf kopfes die das der und insgesamt allein diese dieses ist sind war
  mit aus auf bei zu am im ein eine gute stolze schwer schwere leicht leichte etwa rund knapp gut gewogen gusseisen
  als netto ohne federleicht federleichte mal gerade trotzdem though say satte stattliche bringt waage kuchenwaage zeigt bringt kilo elle il tete qui et seule ensemble celle ci bati corps environ poids
  lourde legere pese fait la le les une un du des sur est sont etait etaient balance fonte nue net affiche kg kgs lb
  lbs pounds pfund livres je j'ai l'ai on nous ich wir weniger unter moins plume peine c' ce facile mini minimum less ne n' qu'environ qu'a dims dim dimensions measures size sizes x
`
    .trim()
    .split(/\s+/),
);

type Words = Pick<PartReading, 'part' | 'hits'>;

/** The first stranger of a stretch, or null. */
export function strangerIn(reading: Words, first: number, to: number): string | null {
  let from = first;
  while (from < to && reading.part.tokens[from]!.kind === 'mark') from++;
  for (let i = from; i < to; i++) {
    const stranger = strangerAt(reading, i, from);
    if (stranger !== null) return stranger;
  }
  return null;
}

/** The word at a place, where it is neither the thing's, nor a name or a phrase that some pack knows of it; else null. */
export function strangerAt({ part, hits }: Words, i: number, from = i): string | null {
  const token = part.tokens[i];
  if (token?.kind !== 'word' || OF_THE_THING.has(token.folded)) return null;
  // "Without case 6.5 kg".
  if (LEFT_OUT.test(part.tokens[i - 1]?.folded ?? '')) return null;
  // "Pied en fonte" is harmless for being of something else.
  const known = hitsOver(hits, i).filter((hit) => hit.value.kind !== 'unless');
  if (known.some((hit) => hit.value.kind !== 'part')) return null;
  // A name, as far as writing tells: a capital inside a sentence, or letters beside a number.
  const isName = known.length === 0 && i > from && hasNameCapital(part, i) && !isGermanNoun(part, i);
  return isName ? null : writtenAt(part, i);
}

const LEFT_OUT = /^(?:without|ohne|sans|minus)$/;

/** Where most words inside sentences with capitals are nouns, a capital tells no name. */
function isGermanNoun(part: TextPart, at: number): boolean {
  const before = part.tokens[at - 1]?.folded ?? '';
  return /^(?:der|die|das|dem|den|des|ein|eine|einen|mein|meine|sein|ihr|zum|im|am)$/.test(before);
}
