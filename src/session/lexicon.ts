import type { AttributeKnown, Knowledge } from '../pack/knowledge';
import { localText } from '../pack/local-text';
import type { LocalText } from '../pack/schema/parts';

/** A term of the trade, explained. */
export interface Term {
  label: string;
  explain: string | null;
  where: string | null;
  see: string | null;
}

/** What is said of a pack wherever it speaks. */
export interface PackNote {
  id: string;
  title: string;
  edition: number;
  licence: string;
  /** Language tag of its texts. */
  language: string;
  sealedBy: string | null;
  /** Invented content, for demonstration. */
  demo: boolean;
}

/** The words for what an audit names by reference. */
export interface Lexicon {
  /** A model's label; the reference itself where no pack knows it. */
  model(ref: string): string;
  /** null where there is nothing to explain. */
  term(attribute: string): Term | null;
  pack(id: string): PackNote | null;
}

export function lexiconOf(knowledge: Knowledge): Lexicon {
  return {
    model: (ref) => knowledge.models.get(ref)?.label ?? ref,
    term: (attribute) => termOf(knowledge.attributes.get(attribute) ?? byOwnId(knowledge, attribute)),
    pack: (id) => {
      const known = knowledge.packs.find((pack) => pack.id === id);
      if (!known) return null;
      const { title, edition, licence, language, demo } = known.about;
      return {
        id,
        title: localText(title, language),
        edition,
        licence,
        language,
        sealedBy: known.sealedBy,
        demo: demo === true,
      };
    },
  };
}

function byOwnId(knowledge: Knowledge, id: string): AttributeKnown | undefined {
  for (const known of knowledge.attributes.values()) if (known.id === id) return known;
  return undefined;
}

function termOf(known: AttributeKnown | undefined): Term | null {
  if (!known) return null;
  const { label, explain, where, see } = known.def;
  const text = (part: LocalText | undefined) => (part === undefined ? null : localText(part, 'en'));
  const term = { label: localText(label, 'en'), explain: text(explain), where: text(where), see: text(see) };
  return (term.explain ?? term.where ?? term.see) ? term : null;
}
