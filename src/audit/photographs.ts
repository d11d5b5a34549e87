import { speaks } from '../claims/language';
import { allowedBy } from '../pack/compile/facts';
import type { PackKnown } from '../pack/knowledge';
import type { Photograph } from '../pack/schema/photographs';
import { PhraseIndex } from '../text/phrases';
import { attributeOf } from './attribute-of';
import type { AuditCase } from './case';
import { isSaid, isTold } from './told';

/** Which number and which model it is: what an advert may leave open beside its features. */
export type OpenName = 'serial' | 'model';

export interface WantedPhotograph {
  pack: PackKnown;
  entry: Photograph;
}

/**
 * The photographs worth asking for, in their packs' order, the most telling first: those that settle something that is
 * still open, each thing once; those that settle nothing by themselves ("plug and flex") where they are called for.
 * @param open names that the advert leaves open
 * @param spokenOf photographs that the advert deals with itself: none of these
 */
export function photographsWanted(
  auditCase: AuditCase,
  open: ReadonlySet<OpenName>,
  spokenOf: ReadonlySet<Photograph>,
): WantedPhotograph[] {
  const settled = new Set<string>();
  return covering(auditCase).flatMap((pack) =>
    pack.photographs.flatMap((entry) => {
      if (spokenOf.has(entry) || !isCalledFor(entry, pack.id, auditCase)) return [];
      if (entry.settles || entry.names) {
        const targets = targetsOf(entry, pack.id, auditCase, open).filter((target) => !settled.has(target));
        if (targets.length === 0) return [];
        for (const target of targets) settled.add(target);
      }
      return [{ pack, entry }];
    }),
  );
}

/** The photographs of which the advert's words say that it has them, or why there are none. */
export function photographsSpokenOf(auditCase: AuditCase): Set<Photograph> {
  const { parts, languages } = auditCase.reading;
  return new Set(
    covering(auditCase)
      .map(shownIndex)
      .flatMap((index) => parts.flatMap((part) => index.search(part.tokens)))
      .filter(({ value }) => speaks(languages, value.lang))
      .map(({ value }) => value.entry),
  );
}

function covering({ knowledge, reading }: AuditCase): PackKnown[] {
  return knowledge.packs.filter((pack) => reading.covering.has(pack.id));
}

/** What it would settle that is still open: attributes by their refs, and names. */
function targetsOf(
  { settles = [], names = [] }: Photograph,
  pack: string,
  auditCase: AuditCase,
  open: ReadonlySet<OpenName>,
): string[] {
  const attributes = settles.flatMap((ref) => {
    const attribute = attributeOf(ref, pack, auditCase.knowledge);
    return attribute && !isTold(auditCase, attribute) ? [attribute.ref] : [];
  });
  return [...attributes, ...names.filter((name) => open.has(name))];
}

function isCalledFor({ facts }: Photograph, pack: string, auditCase: AuditCase): boolean {
  if (!facts) return true;
  return facts.some(({ attribute: ref, is }) => {
    const attribute = attributeOf(ref, pack, auditCase.knowledge);
    const wanted = attribute && allowedBy(is, attribute);
    return attribute && wanted ? isSaid(auditCase, attribute, wanted) : false;
  });
}

type ShownIndex = PhraseIndex<{ entry: Photograph; lang: string }>;
const indexes = new WeakMap<PackKnown, ShownIndex>();

function shownIndex(pack: PackKnown): ShownIndex {
  const there = indexes.get(pack);
  if (there) return there;
  const index: ShownIndex = new PhraseIndex();
  const home = pack.about.language;
  for (const entry of pack.photographs)
    for (const phrase of entry.shown ?? []) {
      const { text, lang = home } = typeof phrase === 'string' ? { text: phrase } : phrase;
      index.add(text, { entry, lang: lang.split('-')[0] ?? lang });
    }
  indexes.set(pack, index);
  return index;
}
