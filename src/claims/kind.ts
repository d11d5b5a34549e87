import type { Listing } from '../listing/types';
import { asksFirst, countsNames, describesThing, offersParts, offersWork } from './described';
import { headOf } from './head-noun';
import type { Hit } from './hits';
import { type CueMatch, cuesIn } from './kind-cues';
import { listsOffers } from './offers-listed';
import { firstWordOf, type TextPart } from './part-text';
import type { NameClaim } from './reading';
import type { Kind } from './types';

/** A page with so many separate offers and no seller's text of its own is a list of adverts. */
const OFFERS_OF_A_LIST = 2;

interface KindInput {
  listing: Listing;
  title: TextPart | null;
  description: TextPart | null;
  /** Phrases of packs in title and description. */
  hits: ReadonlyMap<TextPart, readonly Hit[]>;
  names: readonly NameClaim[];
}

/** What is on offer: the thing itself, a part, a wish, several things, a service; or a page of many adverts, or none. */
export function kindOf(input: KindInput): Kind {
  const { listing, title, description, hits, names } = input;
  if (!listing.title && !listing.description && !listing.price) return 'none';
  if (listing.offers >= OFFERS_OF_A_LIST && !listing.description) return 'list';
  if (listsOffers(title, description, names)) return 'list';
  const byTitle = title && kindByTitle(input, title);
  if (byTitle) return byTitle;
  if (asksFirst(description, names)) return 'wanted';
  if (title || !description) return 'item';
  return headOf(description, hits.get(description) ?? [], names, cuesIn(description)) ?? 'item';
}

/** Null where the title names nothing that could be on sale. */
function kindByTitle({ listing, description, hits, names }: KindInput, title: TextPart): Kind | null {
  const cues = cuesIn(title);
  if (asksForOne(title, cues)) return 'wanted';
  if (offersService(title, cues) || offersWork(description, listing)) return 'service';
  if (offersPicture(cues)) return 'none';
  const inTitle = hits.get(title) ?? [];
  const inDescription = (description && hits.get(description)) ?? [];
  const head = headOf(title, inTitle, names, cues);
  // "Breaking a Name for spares", "treadle irons only, no machine".
  if (/^(?:breaking|dismantling)$/.test(title.tokens[firstWordOf(title.tokens)]?.folded ?? '')) return 'part';
  if (cues.some(({ value }) => value === 'no-machine')) return 'part';
  if (countsParts(title, inTitle)) return 'part';
  if (head === 'lot' || countsNames(description, names)) return 'lot';
  const sellsParts = offersParts(description, inDescription, names) || isWithoutIt(inTitle, names, description);
  if (head === 'part') {
    const goesOn = opensWithName(inTitle, names) && !sellsParts && describesThing(description, inDescription, names);
    return goesOn ? itemOrWanted(description, names) : 'part';
  }
  if (sellsParts) return 'part';
  return head && itemOrWanted(description, names);
}

/** "Lot of 10 bobbins", "bag of 25 small steel bobbins", "lot 10 canettes": several of one part. */
function countsParts({ tokens }: TextPart, inTitle: readonly Hit[]): boolean {
  let at = firstWordOf(tokens);
  if (!/^(?:lot|pack|set|bag|box|tin|jar|card|posten|paket|beutel|sachet)$/.test(tokens[at]?.folded ?? ''))
    return false;
  const isOf = /^(?:of|de|von|mit)$/.test(tokens[at + 1]?.folded ?? '');
  at += isOf ? 2 : 1;
  // "Box of sewing machine bits".
  if (isOf && tokens.slice(at, at + FEW + 1).some(({ folded }) => BITS.test(folded)))
    return !tokens.some(({ folded }) => /^(?:heads|machines)$/.test(folded));
  return (
    /^\d{1,3}$/.test(tokens[at]?.folded ?? '') &&
    inTitle.some(
      ({ value, firstToken }) =>
        value.kind === 'part' &&
        firstToken > at &&
        firstToken - at <= FEW &&
        tokens.slice(at + 1, firstToken).every(({ kind }) => kind === 'word'),
    )
  );
}

const BITS =
  /^(?:bits|parts|spares|attachments|accessories|bobbins|feet|needles|screws|shuttles|teile|ersatzteile|pieces)$/;
/** In words: "25 small steel bobbins". */
const FEW = 3;

/** "Name motor and pedal. No machine, just what you see.": of a title with a part and no machine in it but by name. */
function isWithoutIt(inTitle: readonly Hit[], names: readonly NameClaim[], description: TextPart | null): boolean {
  const isName = ({ start, end }: Hit): boolean =>
    names.some((name) => name.field === 'title' && name.start <= start && name.end >= end);
  const sellsPart = inTitle.some(({ value }) => value.kind === 'part');
  if (!description || !sellsPart || inTitle.some((hit) => hit.value.kind === 'thing' && !isName(hit))) return false;
  // "There is no machine oil".
  return cuesIn(description).some(
    ({ value, lastToken }) => value === 'no-machine' && description.tokens[lastToken + 1]?.kind !== 'word',
  );
}

function itemOrWanted(description: TextPart | null, names: readonly NameClaim[]): Kind {
  return asksFirst(description, names) ? 'wanted' : 'item';
}

/** "Wanted: …", "Name gesucht", "wer hat …?" */
function asksForOne(title: TextPart, cues: readonly CueMatch[]): boolean {
  const first = firstWordOf(title.tokens);
  return cues.some(({ value, firstToken, lastToken }) => {
    if (value === 'asking') return true;
    if (value !== 'wanted') return false;
    const closes = lastToken >= title.tokens.length - 2 && /^(wanted|gesucht|suche)/.test(folded(title, firstToken));
    return closes || firstToken <= first + 1;
  });
}

function offersService(title: TextPart, cues: readonly CueMatch[]): boolean {
  const first = firstWordOf(title.tokens);
  return (
    saysWhatWeDo(title, first) ||
    cues.some(({ value, firstToken }) => value === 'service' || (value === 'service-first' && firstToken <= first)) ||
    endsInWork(title)
  );
}

/** "We re-tire friction wheels." */
function saysWhatWeDo({ tokens }: TextPart, first: number): boolean {
  const verb = tokens[first + 1];
  return tokens[first]?.folded === 'we' && verb?.kind === 'word' && !NO_WORK.test(verb.folded);
}

const NO_WORK =
  /^(?:buy|sell|have|are|am|want|wish|need|bought|sold|found|can|cannot|can't|don't|collect|love|think|got|had|were|will|also|ship|no|just|only|still|do|must|made|went|\w+ed)$/;

/** "Poster with a Name on it", "enamel sign": neither the thing nor a part; not "Name with a poster". */
function offersPicture(cues: readonly CueMatch[]): boolean {
  const picture = cues.find(({ value }) => value === 'picture');
  const isBeside = ({ value, firstToken }: CueMatch): boolean =>
    value === 'accompanying' && firstToken < picture!.firstToken;
  return picture !== undefined && !cues.some(isBeside);
}

/** "Name and Other repairs, south of the river", "Name repair, rewiring": the first phrase is work of some sort. */
function endsInWork({ clauses }: TextPart): boolean {
  const [words = [], next = []] = clauses
    .slice(0, 2)
    .map(({ tokens }) => tokens.filter(({ kind }) => kind === 'word').map(({ folded }) => folded));
  const [before = '', last = ''] = words.slice(-2);
  // "Name needs servicing", "spares or repair, cleaning overdue".
  if (words.length < 2 || /^(?:needs?|requires?|no|without|after|or|for)$/.test(before)) return false;
  // "Old motors and pedals rewired – Name".
  if (/[^s]s$/.test(before) && /^re(?:wired|wound|tyred|covered)$/.test(last) && words.length > 2) return true;
  // "Old Names cleaned, timed, rewired".
  if (/[^s]s$/.test(before) && DONE.test(last) && next.length === 1 && DONE.test(next[0]!)) return true;
  return WORKS.test(last) || (WORK.test(last) && next.some((word) => WORKS.test(word) || WORK.test(word)));
}

/** They offer work where they end a title's first phrase; the others where more of it follows. */
const WORKS = /^(?:repairs|servicing|sharpening|regrinding|rewinding|overhauls|refinishing|reparaturen|reparations)$/;
const WORK = /^(?:repair|rewiring|timing|tuning|cleaning|overhaul|restoration)$/;
const DONE = /^(?:cleaned|freed|timed|retimed|tuned|oiled|rewired|serviced|mended|repaired|overhauled)$/;
const OPENS_WITHIN = 12;

/** "Name treadle cabinet": the name opens the title, before any part. */
function opensWithName(hits: readonly Hit[], names: readonly NameClaim[]): boolean {
  const part = hits.find(({ value }) => value.kind === 'part');
  return names.some(({ field, start }) => field === 'title' && start <= OPENS_WITHIN && (!part || start < part.start));
}

function folded(part: TextPart, token: number): string {
  return part.tokens[token]!.folded;
}
