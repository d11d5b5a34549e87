import type { AttributeKnown } from '../pack/knowledge';
import { tokenise } from '../text/tokens';

const labels = new WeakMap<AttributeKnown, ReadonlySet<string>>();
const phrases = new WeakMap<AttributeKnown, ReadonlySet<string>>();

/** The words by which an attribute is called, folded: "bobbin". */
export function labelWords(attribute: AttributeKnown): ReadonlySet<string> {
  const { id, def } = attribute;
  return cached(labels, attribute, () => [
    id,
    ...(typeof def.label === 'string' ? [def.label] : Object.values(def.label)),
  ]);
}

/** The words by which a pack lets an advert speak of an attribute, folded: "body", "casting", of what a frame is made. */
export function phraseWords(attribute: AttributeKnown): ReadonlySet<string> {
  const { def } = attribute;
  return cached(phrases, attribute, () => {
    const all =
      def.kind === 'choice'
        ? def.values.flatMap((value) => value.words ?? [])
        : def.kind === 'yes-no'
          ? [...(def.yes ?? []), ...(def.no ?? [])]
          : (def.words ?? []);
    return all.map((phrase) => (typeof phrase === 'string' ? phrase : phrase.text));
  });
}

function cached(
  cache: WeakMap<AttributeKnown, ReadonlySet<string>>,
  attribute: AttributeKnown,
  texts: () => string[],
): ReadonlySet<string> {
  const there = cache.get(attribute);
  if (there) return there;
  const made = new Set(
    texts().flatMap((text) => tokenise(text).flatMap(({ kind, folded }) => (kind === 'word' ? [folded] : []))),
  );
  cache.set(attribute, made);
  return made;
}
