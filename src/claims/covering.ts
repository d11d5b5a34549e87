import type { Knowledge } from '../pack/knowledge';
import { type Hit, ofKind } from './hits';
import type { TextPart } from './part-text';
import type { NameClaim } from './reading';

/**
 * The packs that speak of what the advert offers: a word for the thing, a part of it, or one of the pack's own names
 * stands in the title or the text. Where a pack speaks, the one that it extends speaks too; not the other way round: a
 * club knows its own makers only. Of a thing described by hand every club of its kind is asked, as it may be of theirs.
 */
export function coveringPacks(
  knowledge: Knowledge,
  hits: ReadonlyMap<TextPart, readonly Hit[]>,
  names: readonly NameClaim[],
  byHand = false,
): Set<string> {
  const covering = new Set<string>();
  // "Not a Name" and "like a Name" show nothing; where the word for the thing is such a name, neither does it.
  const unmeant = names.filter((name) => name.stance === 'denies' || name.stance === 'likens');
  for (const [part, list] of hits)
    for (const hit of ofKind(list, 'thing'))
      if (!unmeant.some((name) => name.field === part.field && hit.start >= name.start && hit.end <= name.end))
        covering.add(hit.value.pack);
  for (const name of names) {
    if ('maker' in name.of || unmeant.includes(name)) continue;
    covering.add('model' in name.of ? name.of.model.pack : name.of.family.pack);
  }
  // A part noun alone ("table", "lamp") shows nothing; beside a maker's name it does.
  const makers: string[] = [];
  for (const name of names) if ('maker' in name.of && !unmeant.includes(name)) makers.push(name.of.pack);
  const theirs = knowledge.packs
    .filter((pack) => makers.includes(pack.id))
    .flatMap(({ id, about }) => [id, about.extends]);
  for (const list of hits.values())
    for (const hit of ofKind(list, 'part'))
      if (theirs.includes(hit.value.pack)) for (const id of makers) covering.add(id);
  for (const pack of knowledge.packs) {
    const base = pack.about.extends;
    if (base === undefined) continue;
    if (covering.has(pack.id) && knowledge.packs.some((one) => one.id === base)) covering.add(base);
  }
  if (byHand)
    for (const { id, about } of knowledge.packs)
      if (about.extends !== undefined && covering.has(about.extends)) covering.add(id);
  return covering;
}
