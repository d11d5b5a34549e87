import type { MeasureClaim } from '../../claims/reading';
import type { Stanced } from '../../claims/types';
import type { Allowed, AttributeKnown, FactKnown, ModelKnown } from '../../pack/knowledge';
import { askTexts } from '../../text/catalogue/asks';
import { findingTexts } from '../../text/catalogue/findings';
import { fold } from '../../text/fold';
import { attributeOf } from '../attribute-of';
import { type AuditCase, type HeldAgainst, heldAgainst } from '../case';
import { conditionsOf, type Held, hold, isAsserted } from '../claims-held';
import { factsInForce } from '../conditions';
import { grouped } from '../grouped';
import { holdForSerials, serialsModels, withSerials } from '../serials-model';
import type { Finding, Standing } from '../types';
import { allowedText, askOf, knownFacts, saidEach } from '../words';

const texts = findingTexts.weight;

/** A kitchen scale and a bathroom scale differ; "approx." differs more. Shares of the weight. Common practice, no source. */
const SCALE_SLACK = 0.05;
const GUESS_SLACK = 0.2;

/**
 * Stated weights and other measures, and words that limit them ("lightweight"), against what the model measures; where
 * the serial is another model's, against that one's too.
 */
export function weight(auditCase: AuditCase): Finding[] {
  return [...measured(auditCase), ...limited(auditCase)];
}

type Range = Extract<Allowed, { kind: 'range' }>;

/** What is said of a measure, in one place or several, and the range that it allows. */
interface Stated {
  claims: readonly [Stanced, ...Stanced[]];
  attribute: AttributeKnown;
  allowed: Allowed;
}

function measured(auditCase: AuditCase): Finding[] {
  const said = auditCase.reading.measures.filter((claim) => isAsserted(claim) && claim.stance === 'says');
  const key = ({ attribute, low, high, approximate, bound, withMore, alone }: MeasureClaim): string =>
    [attribute.ref, low, high, approximate, bound, withMore, alone].join(' ');
  const groups = grouped(said, key);
  return groups.flatMap((claims) => {
    const claim = claims[0];
    const allowance = allowanceOf(claim);
    const exact = rangeOf(claim);
    const stated: Stated = { claims, attribute: claim.attribute, allowed: exact };
    const held = hold(auditCase, claim.attribute, exact, false);
    const first = held?.facts[0];
    if (!held || !first) return claim.bound ? [] : wide(auditCase, stated, exact);
    if (held.verdict === 'conflict' || isFarOff(claim, held.facts)) return [];
    if (held.verdict === 'agrees')
      return claim.bound ? [] : [report(auditCase, stated, held.facts, 'agrees', texts.agrees)];
    const tooHeavy = held.facts.every(({ fact }) => fact.allowed.kind === 'range' && claim.low > fact.allowed.to);
    const inCase: Allowed = { kind: 'range', from: exact.from - allowance, to: exact.to };
    const evenInCase = hold(auditCase, claim.attribute, inCase, false)?.verdict === 'refutes';
    if (
      tooHeavy &&
      !claim.alone &&
      (claim.withMore || (!evenInCase && (speaksOfCase(auditCase) || !isMuchOver(claim, held.facts))))
    ) {
      return claim.withMore ? [] : [report(auditCase, stated, held.facts, 'unproved', texts.withCase)];
    }
    // Of two weights the one that fits is the thing's; the other is more likely something else's.
    const other = groups.find(([one]) => one.attribute === claim.attribute && fits(one, held.facts));
    if (other)
      return [
        report(auditCase, stated, held.facts, 'unproved', (quote, ...of) =>
          texts.bothWeights(quote, other[0].quote, ...of),
        ),
      ];
    const [standing, text] = held.firm
      ? (['disproved', texts.disproved] as const)
      : (['caution', texts.unusual] as const);
    return [report(auditCase, stated, held.facts, standing, text)];
  });
}

/** What a machine may have been weighed with. Folded; English, German, French, Dutch. Common practice, no source. */
const CASES =
  /(?:^|[^\p{L}])(?:\w*cases?|lids?|covers?|hood|bases?|plinth|cabinets?|tables?|box(?:es)?|\w*box|bags?|trunk|shipping|postage|all in|in all|total|altogether|gesamt\w*|insgesamt|versand\w*|expedition|motors?|pedals?|parcel|package|packed|carton|paket|karton|colis|stand|crate|\w*koffers?|hauben?|\w*haube|deckel|tisch\w*|kasten|kiste|gestell|sockel|valise|coffret|coffre|mallette|housse|couvercle|capot|meuble|socle|kist|kap|kast|tas|tafel)(?!\p{L})/u;

/** So much over what is known is more than a plug and its lead, or a scale's whim. Common practice, no source. */
const MUCH_OVER = 1.15;

const isMuchOver = ({ low }: MeasureClaim, facts: readonly { fact: FactKnown }[]): boolean =>
  facts.every(({ fact: { allowed } }) => allowed.kind === 'range' && low > allowed.to * MUCH_OVER);

/** A case, lid or base stands in the advert: its weight may be in the one that is told. */
const speaksOfCase = ({ listing }: AuditCase): boolean =>
  CASES.test(fold(`${listing.title} ${listing.description} ${listing.details}`).text);

/** What a stated weight may be, as scales and guesses go. */
function rangeOf({ low, high, approximate, bound }: MeasureClaim): Range {
  const slack = approximate ? GUESS_SLACK : SCALE_SLACK;
  return {
    kind: 'range',
    from: bound === 'most' ? 0 : low * (1 - slack),
    to: bound === 'least' ? Number.POSITIVE_INFINITY : high * (1 + slack),
  };
}

function fits(claim: MeasureClaim, facts: readonly { fact: FactKnown }[]): boolean {
  return !claim.bound && !claim.withMore && facts.every(({ fact }) => meets(fact, rangeOf(claim)));
}

const meets = ({ allowed }: FactKnown, { from, to }: { from: number; to: number }): boolean =>
  allowed.kind === 'range' && allowed.from <= to && allowed.to >= from;

/** Less than a third, or more than three times: of a bobbin, a parcel or a load, whatever the sentence says. */
const FAR = 3;

function isFarOff(claim: MeasureClaim, facts: readonly { fact: FactKnown }[]): boolean {
  return facts.every(
    ({ fact: { allowed } }) =>
      allowed.kind === 'range' && (claim.high * FAR < allowed.from || claim.low > allowed.to * FAR),
  );
}

/** A reading inside the known range agrees, although the range is wider than the reading. */
function wide(auditCase: AuditCase, stated: Stated, said: { kind: 'range'; from: number; to: number }): Finding[] {
  const first = heldAgainst(auditCase).each[0];
  if (!first || !reaches(auditCase, first, stated.attribute, said)) return [];
  const { facts } = factsInForce(first.model, stated.attribute.ref, conditionsOf(auditCase, first.run));
  const known = facts.map((fact) => ({ model: first.model, fact }));
  return [report(auditCase, stated, known, 'agrees', texts.agrees)];
}

/** What is said and all that is known of the model meet. */
function reaches(
  auditCase: AuditCase,
  { model, run }: HeldAgainst,
  attribute: AttributeKnown,
  said: { from: number; to: number },
): boolean {
  const { facts, whole } = factsInForce(model, attribute.ref, conditionsOf(auditCase, run));
  return whole && facts.length > 0 && facts.every((fact) => meets(fact, said));
}

function limited(auditCase: AuditCase): Finding[] {
  const words = auditCase.reading.wordings.filter((claim) => isAsserted(claim) && claim.stance !== 'denies');
  return grouped(words, ({ pack, entry }) => `${pack}/${entry.id}`).flatMap((claims) => {
    const { entry, pack } = claims[0];
    const means = entry.means;
    if (!means || !('attribute' in means) || 'is' in means) return [];
    const attribute = attributeOf(means.attribute, pack, auditCase.knowledge);
    if (!attribute) return [];
    const allowed: Allowed = {
      kind: 'range',
      from: means.atLeast ?? Number.NEGATIVE_INFINITY,
      to: means.atMost ?? Number.POSITIVE_INFINITY,
    };
    const stated: Stated = { claims, attribute, allowed };
    const held = hold(auditCase, attribute, allowed, false);
    if (!held || held.verdict === 'conflict') return [];
    if (held.verdict === 'agrees') return [report(auditCase, stated, held.facts, 'agrees', texts.agrees)];
    const firm = held.firm && entry.use !== 'loose';
    return [
      report(auditCase, stated, held.facts, firm ? 'disproved' : 'caution', firm ? texts.disproved : texts.unusual),
    ];
  });
}

function allowanceOf(claim: MeasureClaim): number {
  return claim.attribute.def.kind === 'measure' ? (claim.attribute.def.allowance ?? 0) : 0;
}

type Facts = readonly { model: ModelKnown; fact: FactKnown }[];

function report(
  auditCase: AuditCase,
  stated: Stated,
  facts: Facts,
  standing: Standing,
  text: (quote: string, model: string, range: string) => string,
): Finding {
  const { claims, attribute } = stated;
  const { model, fact } = facts[0]!;
  const same = facts.every((one) => one.model === model);
  const isWeight = attribute.def.kind === 'measure' && attribute.def.unit === 'kg';
  const label = same ? model.label : findingTexts.claimFact.whichever;
  const ask = attribute.def.ask ?? (isWeight ? askTexts.weight : null);
  const other = ofSerials(auditCase, stated);
  const isOpen = standing === 'agrees' && other?.verdict === 'refutes';
  const sentence = text(claims[0].quote, label, allowedText(attribute, fact.allowed));
  const all = [...facts.slice(0, 3), ...(other?.facts ?? [])];
  return {
    id: `weight:${attribute.ref}:${claims[0].field}:${claims[0].start}`,
    check: isWeight ? 'weight' : 'claim-fact',
    standing: isOpen ? 'unproved' : standing,
    attribute: attribute.id,
    said: saidEach(claims),
    known: knownFacts(all, auditCase.knowledge, all.length),
    text: withSerials(auditCase, sentence, standing === 'agrees' ? 'agrees' : 'refutes', other),
    ask: (standing === 'agrees' && !isOpen) || !ask ? null : askOf(ask, auditCase),
  };
}

/** Held against the models to which the serial was allotted. A reading inside a wider range agrees with it. */
function ofSerials(auditCase: AuditCase, { attribute, allowed }: Stated): Held | null {
  const held = holdForSerials(auditCase, attribute, allowed, false);
  const models = serialsModels(auditCase);
  if (held || models.length === 0 || allowed.kind !== 'range') return held;
  if (!models.every((one) => reaches(auditCase, one, attribute, allowed))) return null;
  const facts = models.flatMap(({ model, run }) =>
    factsInForce(model, attribute.ref, conditionsOf(auditCase, run)).facts.map((fact) => ({ model, fact })),
  );
  return { verdict: 'agrees', firm: facts.every(({ fact }) => fact.always), facts };
}
