import type { NumberPlace } from '../audit/number-place';
import type { Audit } from '../audit/types';
import { say } from '../audit/words';
import type { AttributeKnown, Knowledge } from '../pack/knowledge';
import { localText } from '../pack/local-text';
import type { LocalText } from '../pack/schema/parts';
import { attributeKnown } from './attribute-known';
import type { KindNote } from './kind-note';
import { termSpots } from './term-spots';
import { textsShown } from './texts-shown';
import type { PackNote, Term, Words } from './words';

/** Ids of the packs that came with the program. */
export type Shipped = ReadonlySet<string>;
export const NONE_SHIPPED: Shipped = new Set();

/** The words for all that an audit names, and for what is said of the kind that it most likely is. */
export function wordsOf(
  audit: Audit,
  kind: KindNote | null,
  place: NumberPlace | null,
  knowledge: Knowledge,
  shipped: Shipped,
): Words {
  const terms = new Map<string, Term>();
  for (const attribute of attributesNamed(audit)) {
    const term = termOf(attributeKnown(knowledge, attribute));
    if (term) terms.set(attribute, term);
  }
  const spots = termSpots(textsShown(audit, kind, terms.values()), knowledge, speaking(audit, knowledge));
  return { ...wordsForModels(modelsNamed(audit, place), knowledge, shipped), terms, spots };
}

/** The packs that spoke, and those that they extend. */
function speaking({ packs }: Audit, knowledge: Knowledge): Set<string> {
  const spoke = new Set(packs.map(({ id }) => id));
  const bases = knowledge.packs.flatMap(({ id, about }) => (spoke.has(id) ? (about.extends ?? []) : []));
  return new Set([...spoke, ...bases]);
}

/** The words for some models and for all packs. */
export function wordsForModels(refs: Iterable<string>, knowledge: Knowledge, shipped: Shipped): Words {
  const models = new Map<string, string>();
  for (const ref of refs) {
    const known = knowledge.models.get(ref);
    if (known) models.set(ref, known.label);
  }
  return { models, terms: new Map(), spots: new Map(), packs: notesOf(knowledge, shipped) };
}

function attributesNamed({ findings, likely, nextEvidence }: Audit): Set<string> {
  const named = [...findings, ...nextEvidence, ...likely.flatMap(({ follows }) => follows)];
  return new Set(named.flatMap(({ attribute }) => attribute ?? []));
}

function modelsNamed(audit: Audit, place: NumberPlace | null): Set<string> {
  const serials = [audit.serial, ...audit.serials];
  const named = serials.flatMap(({ runs, suggestions }) => [...runs, ...suggestions].flatMap(({ models }) => models));
  const drawn = (place?.lines ?? []).flatMap(({ runs }) => runs.flatMap(({ models }) => models));
  return new Set([...named, ...drawn, ...(audit.claimedModel === null ? [] : [audit.claimedModel])]);
}

function termOf(known: AttributeKnown | undefined): Term | null {
  if (!known) return null;
  const { label, explain, where, see, question } = known.def;
  const text = (part: LocalText | undefined) => (part === undefined ? null : say(part));
  const term = { label: say(label), explain: text(explain), where: text(where), see: text(see) };
  const explained = term.explain !== null || term.where !== null || term.see !== null;
  return explained || question !== undefined ? { ...term, question: text(question) } : null;
}

function notesOf({ packs }: Knowledge, shipped: Shipped): Map<string, PackNote> {
  return new Map(packs.map((pack) => [pack.id, noteOf(pack)]));

  function noteOf({ id, about, sealedBy }: Knowledge['packs'][number]): PackNote {
    const { title, edition, language, demo, covers } = about;
    // A pack that extends another one speaks of the same things.
    const base = packs.find((pack) => pack.id === about.extends);
    return {
      ...{ id, title: localText(title, 'en', language), edition, language, sealedBy, shipped: shipped.has(id) },
      ...{ demo: demo === true, outline: covers.outline ?? base?.about.covers.outline ?? null },
    };
  }
}
