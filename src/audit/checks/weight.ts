import type { MeasureClaim } from '../../claims/reading';
import type { Stanced } from '../../claims/types';
import type { Allowed, AttributeKnown, FactKnown, ModelKnown } from '../../pack/knowledge';
import { findingTexts } from '../../text/catalogue/findings';
import { attributeOf } from '../attribute-of';
import { type AuditCase, heldAgainst } from '../case';
import { conditionsOf, hold, isAsserted } from '../claims-held';
import { factsInForce } from '../conditions';
import type { Finding, Standing } from '../types';
import { allowedText, knownFact, saidEach, say } from '../words';

const texts = findingTexts.weight;

/** A kitchen scale and a bathroom scale differ; "approx." differs more. Shares of the weight. Common practice, no source. */
const SCALE_SLACK = 0.05;
const GUESS_SLACK = 0.2;

/** Stated weights and other measures, and words that limit them ("lightweight"), against what the model measures. */
export function weight(auditCase: AuditCase): Finding[] {
  return [...measured(auditCase), ...limited(auditCase)];
}

function measured(auditCase: AuditCase): Finding[] {
  return auditCase.reading.measures
    .filter((claim) => isAsserted(claim) && claim.stance === 'says')
    .flatMap((claim) => {
      const slack = claim.approximate ? GUESS_SLACK : SCALE_SLACK;
      const allowance = allowanceOf(claim);
      const exact: Allowed = { kind: 'range', from: claim.low * (1 - slack), to: claim.high * (1 + slack) };
      const held = hold(auditCase, claim.attribute, exact, false);
      const first = held?.facts[0];
      if (!held || !first) return wide(auditCase, claim, exact);
      if (held.verdict === 'conflict' || isFarOff(claim, held.facts)) return [];
      if (held.verdict === 'agrees') return [report(claim, held.facts, 'agrees', texts.agrees)];
      const tooHeavy = held.facts.every(({ fact }) => fact.allowed.kind === 'range' && claim.low > fact.allowed.to);
      const inCase: Allowed = { kind: 'range', from: exact.from - allowance, to: exact.to };
      const evenInCase = hold(auditCase, claim.attribute, inCase, false)?.verdict === 'refutes';
      if (tooHeavy && (claim.withMore || !evenInCase)) {
        return claim.withMore ? [] : [report(claim, held.facts, 'unproved', texts.withCase)];
      }
      return [
        report(claim, held.facts, held.firm ? 'disproved' : 'caution', held.firm ? texts.disproved : texts.unusual),
      ];
    });
}

/** Less than a third, or more than three times: of a bobbin, a parcel or a load, whatever the sentence says. */
const FAR = 3;

function isFarOff(claim: MeasureClaim, facts: readonly { fact: FactKnown }[]): boolean {
  return facts.every(
    ({ fact: { allowed } }) =>
      allowed.kind === 'range' && (claim.high * FAR < allowed.from || claim.low > allowed.to * FAR),
  );
}

/** A reading inside the known range agrees, although the range is wider than the reading. */
function wide(auditCase: AuditCase, claim: MeasureClaim, said: { kind: 'range'; from: number; to: number }): Finding[] {
  const first = heldAgainst(auditCase).each[0];
  if (!first) return [];
  const { facts, whole } = factsInForce(first.model, claim.attribute.ref, conditionsOf(auditCase, first.run));
  const fits = facts.every(
    ({ allowed }) => allowed.kind === 'range' && allowed.from <= said.to && allowed.to >= said.from,
  );
  if (!whole || facts.length === 0 || !fits) return [];
  return [
    report(
      claim,
      facts.map((fact) => ({ model: first.model, fact })),
      'agrees',
      texts.agrees,
    ),
  ];
}

function limited(auditCase: AuditCase): Finding[] {
  return auditCase.reading.wordings.filter(isAsserted).flatMap((claim) => {
    const means = claim.entry.means;
    if (!means || !('attribute' in means) || 'is' in means || claim.stance === 'denies') return [];
    const attribute = attributeOf(means.attribute, claim.pack, auditCase.knowledge);
    if (!attribute) return [];
    const limit: Allowed = {
      kind: 'range',
      from: means.atLeast ?? Number.NEGATIVE_INFINITY,
      to: means.atMost ?? Number.POSITIVE_INFINITY,
    };
    const held = hold(auditCase, attribute, limit, false);
    if (!held || held.verdict === 'conflict') return [];
    if (held.verdict === 'agrees') return [report({ ...claim, attribute }, held.facts, 'agrees', texts.agrees)];
    const firm = held.firm && claim.entry.use !== 'loose';
    return [
      report(
        { ...claim, attribute },
        held.facts,
        firm ? 'disproved' : 'caution',
        firm ? texts.disproved : texts.unusual,
      ),
    ];
  });
}

function allowanceOf(claim: MeasureClaim): number {
  return claim.attribute.def.kind === 'measure' ? (claim.attribute.def.allowance ?? 0) : 0;
}

function report(
  claim: Stanced & { attribute: AttributeKnown },
  facts: readonly { model: ModelKnown; fact: FactKnown }[],
  standing: Standing,
  text: (quote: string, model: string, range: string) => string,
): Finding {
  const { model, fact } = facts[0]!;
  const same = facts.every((one) => one.model === model);
  const isWeight = claim.attribute.def.kind === 'measure' && claim.attribute.def.unit === 'kg';
  const label = same ? model.label : findingTexts.claimFact.whichever;
  const ask = claim.attribute.def.ask ? say(claim.attribute.def.ask) : isWeight ? texts.ask : null;
  return {
    id: `weight:${claim.attribute.ref}:${claim.field}:${claim.start}`,
    check: isWeight ? 'weight' : 'claim-fact',
    standing,
    attribute: claim.attribute.id,
    said: saidEach([claim]),
    known: facts.slice(0, 3).map((one) => knownFact(one.model, one.fact)),
    text: text(claim.quote, label, allowedText(claim.attribute, fact.allowed)),
    ask: standing === 'agrees' ? null : ask,
  };
}
