import { allowedBy } from '../../pack/compile/facts';
import type { Allowed, AttributeKnown } from '../../pack/knowledge';
import type { Caution } from '../../pack/schema/wording';
import { assertions } from '../assertions';
import { attributeOf } from '../attribute-of';
import { type AuditCase, type HeldAgainst, heldAgainst, mayBe } from '../case';
import { conditionsOf, hold } from '../claims-held';
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

/** What it is this likely to be calls for its notes, though the advert doesn't say so. Assumed. */
const LIKELY_ENOUGH = 0.85;
/** A feature that is less likely than this is no reason for a note, whatever the advert says. */
const OVERLOOKED = 0.05;

/** The advert's words that call for it, an empty list where something else does, null where nothing does. */
function calledForBy(entry: Caution, pack: string, auditCase: AuditCase): Said[] | null {
  if (!entry.words && !entry.models && !entry.facts) return [];
  const said = auditCase.reading.cautions.filter(
    (one) => one.entry === entry && one.pack === pack && one.stance !== 'denies',
  );
  const ofModel = entry.models?.some((ref) =>
    isOfIt(auditCase, ({ model }) => model.ref === ref || model.ref === `${pack}/${ref}`),
  );
  const facts = (entry.facts ?? []).flatMap((fact) => wantedOf(fact, pack, auditCase) ?? []);
  // Its word alone is enough, but not where it claims what the thing surely isn't: "cast iron" of an aluminium one.
  const shown = said.filter((word) => !facts.some((fact) => isDisproved(auditCase, fact, word)));
  if (shown.length > 0) return saidEach(shown);
  return ofModel || facts.some((fact) => isCalledFor(auditCase, fact)) ? [] : null;
}

interface Wanted {
  attribute: AttributeKnown;
  allowed: Allowed;
}

function wantedOf(
  { attribute: ref, is }: NonNullable<Caution['facts']>[number],
  pack: string,
  { knowledge }: AuditCase,
): Wanted | null {
  const attribute = attributeOf(ref, pack, knowledge);
  const allowed = attribute && allowedBy(is, attribute);
  return attribute && allowed ? { attribute, allowed } : null;
}

/**
 * The word is part of a claim that doesn't hold of the very thing: its number says which it is. Where only a name says
 * so, the name may be what is wrong, and the note stays.
 */
function isDisproved(auditCase: AuditCase, { attribute, allowed }: Wanted, word: Said): boolean {
  const { serial, claimed } = auditCase;
  const isNumbered = serial?.usable && serial.runs.some((run) => claimed.some(({ ref }) => run.models.includes(ref)));
  if (!isNumbered || hold(auditCase, attribute, allowed, false)?.verdict !== 'refutes') return false;
  return assertions(auditCase).some(
    (one) =>
      one.attribute === attribute &&
      one.said.some(({ field, start, end }) => field === word.field && start <= word.start && end >= word.end),
  );
}

function isCalledFor(auditCase: AuditCase, { attribute, allowed }: Wanted): boolean {
  if (isOfIt(auditCase, (held) => isSo(auditCase, held, attribute, allowed))) return true;
  const { each } = heldAgainst(auditCase);
  if (each.some((held) => held.model.facts.get(attribute.ref))) return false;
  // The advert's own word for it is enough for a caution.
  return auditCase.reading.values.some(
    (claim) =>
      claim.attribute === attribute &&
      claim.stance !== 'denies' &&
      allowed.kind === 'values' &&
      typeof claim.value === 'string' &&
      allowed.values.has(claim.value),
  );
}

/** It is so of the model that the advert names, unless it is hardly that one; or of all that it very likely is. */
function isOfIt(auditCase: AuditCase, isIt: (held: HeldAgainst) => boolean): boolean {
  const { claimed, identified, candidates } = auditCase;
  const named = heldAgainst(auditCase).each.filter(isIt);
  const share = candidates
    .filter(({ model }) => claimed.includes(model))
    .reduce((sum, { probability }) => sum + probability, 0);
  if (named.length > 0 && (!identified || share >= OVERLOOKED)) return true;
  return shareOf(auditCase, isIt) >= LIKELY_ENOUGH;
}

/** How likely the thing is one of which it is so, of all that the packs know and it may be. */
function shareOf(auditCase: AuditCase, isIt: (held: HeldAgainst) => boolean): number {
  const all = mayBe(auditCase);
  const sum = (some: typeof all): number => some.reduce((total, { probability }) => total + probability, 0);
  return all.length === 0 ? 0 : sum(all.filter(isIt)) / sum(all);
}

/** All facts in force of the model say so. */
function isSo(auditCase: AuditCase, { model, run }: HeldAgainst, attribute: AttributeKnown, wanted: Allowed): boolean {
  const { facts } = factsInForce(model, attribute.ref, conditionsOf(auditCase, run));
  const same = JSON.stringify(comparable(wanted));
  return facts.length > 0 && facts.every((fact) => JSON.stringify(comparable(fact.allowed)) === same);
}

function comparable(allowed: NonNullable<ReturnType<typeof allowedBy>>): unknown {
  return allowed.kind === 'values' ? [...allowed.values].sort() : allowed;
}
