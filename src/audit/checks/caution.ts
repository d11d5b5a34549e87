import { allowedBy } from '../../pack/compile/facts';
import type { Allowed, AttributeKnown } from '../../pack/knowledge';
import type { Caution } from '../../pack/schema/wording';
import { attributeOf } from '../attribute-of';
import { type AuditCase, type HeldAgainst, heldAgainst } from '../case';
import { conditionsOf } from '../claims-held';
import { factsInForce } from '../conditions';
import type { Finding, Said } from '../types';
import { saidEach, say } from '../words';

/** Safety notes: those for any advert, and those that the words, the claimed model or its facts call for. */
export function caution(auditCase: AuditCase): Finding[] {
  const { knowledge, reading } = auditCase;
  return knowledge.packs
    .filter((pack) => reading.covering.has(pack.id))
    .flatMap((pack) =>
      pack.cautions.flatMap((entry) => {
        if (entry.kinds && !entry.kinds.some((kind) => kind === reading.kind)) return [];
        const said = calledForBy(entry, pack.id, auditCase);
        if (!said) return [];
        return [
          {
            id: `caution:${pack.id}/${entry.id}`,
            check: 'caution',
            standing: 'caution',
            attribute: null,
            said,
            known: [
              {
                pack: pack.id,
                entry: entry.id,
                text: say(entry.text),
                source: pack.citations.get(entry.source ?? '') ?? null,
              },
            ],
            text: say(entry.text),
            ask: null,
          } satisfies Finding,
        ];
      }),
    );
}

/** The advert's words that call for it, an empty list where something else does, null where nothing does. */
function calledForBy(entry: Caution, pack: string, auditCase: AuditCase): Said[] | null {
  const { reading, claimed, knowledge } = auditCase;
  const always = !entry.words && !entry.models && !entry.facts;
  const words = reading.cautions.filter((one) => one.entry === entry && one.pack === pack && one.stance !== 'denies');
  if (words.length > 0) return saidEach(words);
  if (always) return [];
  if (entry.models?.some((ref) => claimed.some((model) => model.ref === ref || model.ref === `${pack}/${ref}`)))
    return [];
  const byFact = entry.facts?.some(({ attribute: ref, is }) => {
    const attribute = attributeOf(ref, pack, knowledge);
    const wanted = attribute && allowedBy(is, attribute);
    if (!attribute || !wanted) return false;
    const { each } = heldAgainst(auditCase);
    if (each.some((held) => isSo(auditCase, held, attribute, wanted))) return true;
    if (each.some((held) => held.model.facts.get(attribute.ref))) return false;
    // The advert's own word for it is enough for a caution.
    return reading.values.some(
      (claim) =>
        claim.attribute === attribute &&
        claim.stance !== 'denies' &&
        wanted.kind === 'values' &&
        typeof claim.value === 'string' &&
        wanted.values.has(claim.value),
    );
  });
  return byFact ? [] : null;
}

/** All facts in force of a claimed model say so. */
function isSo(auditCase: AuditCase, { model, run }: HeldAgainst, attribute: AttributeKnown, wanted: Allowed): boolean {
  const { facts } = factsInForce(model, attribute.ref, conditionsOf(auditCase, run));
  const same = JSON.stringify(comparable(wanted));
  return facts.length > 0 && facts.every((fact) => JSON.stringify(comparable(fact.allowed)) === same);
}

function comparable(allowed: NonNullable<ReturnType<typeof allowedBy>>): unknown {
  return allowed.kind === 'values' ? [...allowed.values].sort() : allowed;
}
