import { candidatesIn } from './candidates';
import { beginningOf, type Lapsed, PICKABLE, type Pick, type Pickable, type Picks, readAs } from './picks';
import { settleCandidates } from './settle-candidates';
import type { Candidate, FieldNote, Harvest, Listing, SourceName } from './types';

/**
 * What an advert says where the user has said how some of its fields are to be read: those are decided by the user's
 * word, all others as `settle` would with it. A word that the page no longer bears out is left out and told as lapsed.
 * Throws where a harvest is none.
 */
export function settlePicked(
  harvest: Harvest,
  url: string | null,
  asOf: string | null,
  picks: Picks,
): { listing: Listing; lapsed: Lapsed[] } {
  const { candidates, ...said } = candidatesIn(harvest);
  const page = { url, ...said };
  const own = settleCandidates(candidates, page, asOf);
  const lapsed: Lapsed[] = [];
  const told = new Map<Pickable, Candidate[]>();
  const alone = (one: Candidate) => settleCandidates([one], { ...page, offers: 1, language: own.language }, asOf);

  for (const field of PICKABLE) {
    const pick = picks[field];
    if (!pick || own.offers !== 1) continue;
    const { value } = pick;
    const its = candidates.filter((one) => one.field === field);
    let chosen: Candidate[] = [];
    if (pick.how === 'picked') {
      chosen = readAs(own, field) === value ? its : its.filter((one) => readAs(alone(one), field) === value);
      if (chosen.length === 0) lapsed.push({ field, value, why: 'gone' });
    } else if (!allReadOf(own, field).includes(pick.was)) {
      lapsed.push({ field, value, why: 'changed' });
    } else {
      const typed: Candidate = { field, value, source: 'draft', weight: 1 };
      if (alone(typed).price) chosen = [typed];
      else lapsed.push({ field, value, why: 'unreadable' });
    }
    if (chosen.length > 0) told.set(field, chosen);
  }
  if (told.size === 0) return { listing: own, lapsed };

  const others = candidates.filter(({ field }) => !told.has(field as Pickable));
  const listing = settleCandidates([...others, ...[...told.values()].flat()], page, asOf);
  for (const field of told.keys()) listing.fields[field] = noteByUser(own, listing, field, picks[field]!);
  // A bare amount is in the money of the page's own price.
  if (listing.price && !/[\p{Sc}\p{L}]/u.test(listing.priceText))
    listing.price.currency ??= own.price?.currency ?? null;
  return { listing, lapsed };
}

/** How the page gives a field, its own reading first; "" where it gives none. */
const allReadOf = (own: Listing, field: Pickable): string[] => [
  readAs(own, field),
  ...(own.fields[field]?.alternatives ?? []).map(({ value }) => value),
];

/** The note of a field that the user has decided: the page's own reading comes first among what lost. */
function noteByUser(own: Listing, listing: Listing, field: Pickable, { how, value }: Pick): FieldNote {
  const before = own.fields[field];
  const all = before
    ? [{ value: readAs(own, field), source: before.source as SourceName }, ...before.alternatives]
    : [];
  return {
    source: how === 'typed' ? 'user' : (listing.fields[field] ?? before!).source,
    confidence: 1,
    alternatives: all.filter((one) => how === 'typed' || beginningOf(one.value) !== value),
    byUser: how,
  };
}
