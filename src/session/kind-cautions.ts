import { attributeOf } from '../audit/attribute-of';
import { say } from '../audit/words';
import { judge } from '../identify/judge';
import { allowedBy } from '../pack/compile/facts';
import type { Knowledge, ModelKnown } from '../pack/knowledge';
import { packsOfKind } from './packs-of-kind';

/** The cautions that what is known of a model or kind calls for: iron is heavy. */
export function cautionsOf(model: ModelKnown, knowledge: Knowledge): string[] {
  return packsOfKind(model, knowledge).flatMap(({ id, cautions }) =>
    cautions
      .filter(({ facts }) => facts?.some(({ attribute: ref, is }) => isSo(ref, is, id)))
      .map(({ text }) => say(text)),
  );

  function isSo(ref: string, is: Parameters<typeof allowedBy>[0], pack: string): boolean {
    const attribute = attributeOf(ref, pack, knowledge);
    const allowed = attribute && allowedBy(is, attribute);
    const facts = (attribute && model.facts.get(attribute.ref)) ?? [];
    return !!attribute && !!allowed && judge({ allowed, denied: false }, attribute, facts) === 'agrees';
  }
}
