import type { Audit } from '../audit/types';
import type { AttributeKnown, Knowledge } from '../pack/knowledge';
import { localText } from '../pack/local-text';
import type { LocalText } from '../pack/schema/parts';
import type { PackNote, Term, Words } from './words';

/** The language of the interface; packs may have their texts in several. */
const INTERFACE = 'en';

/** The words for all that an audit names. */
export function wordsOf(audit: Audit, knowledge: Knowledge): Words {
  const terms = new Map<string, Term>();
  for (const { attribute } of audit.findings) {
    const term = attribute === null ? null : termOf(attributeKnown(knowledge, attribute));
    if (attribute !== null && term) terms.set(attribute, term);
  }
  return { ...wordsForModels(modelsNamed(audit), knowledge), terms };
}

/** The words for some models and for all packs. */
export function wordsForModels(refs: Iterable<string>, knowledge: Knowledge): Words {
  const models = new Map<string, string>();
  for (const ref of refs) {
    const known = knowledge.models.get(ref);
    if (known) models.set(ref, known.label);
  }
  return { models, terms: new Map(), packs: new Map(knowledge.packs.map((pack) => [pack.id, noteOf(pack)])) };
}

function modelsNamed(audit: Audit): Set<string> {
  const serials = [audit.serial, ...audit.serials];
  const named = serials.flatMap(({ runs, suggestions }) => [...runs, ...suggestions].flatMap(({ models }) => models));
  return new Set([...named, ...(audit.claimedModel === null ? [] : [audit.claimedModel])]);
}

function attributeKnown(knowledge: Knowledge, name: string): AttributeKnown | undefined {
  return knowledge.attributes.get(name) ?? [...knowledge.attributes.values()].find(({ id }) => id === name);
}

function termOf(known: AttributeKnown | undefined): Term | null {
  if (!known) return null;
  const { label, explain, where, see } = known.def;
  const text = (part: LocalText | undefined) => (part === undefined ? null : localText(part, INTERFACE));
  const term = { label: localText(label, INTERFACE), explain: text(explain), where: text(where), see: text(see) };
  return term.explain !== null || term.where !== null || term.see !== null ? term : null;
}

function noteOf({ id, about, sealedBy }: Knowledge['packs'][number]): PackNote {
  const { title, edition, language, demo } = about;
  return { id, title: localText(title, INTERFACE, language), edition, language, sealedBy, demo: demo === true };
}
