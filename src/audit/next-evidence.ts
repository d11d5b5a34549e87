import { nextEvidence, type Telling } from '../identify/next-evidence';
import type { ModelKnown } from '../pack/knowledge';
import { localText } from '../pack/local-text';
import { askTexts } from '../text/catalogue/asks';
import { identifyTexts as texts } from '../text/catalogue/identify';
import type { AuditCase } from './case';
import { valueText } from './ground-words';
import { ownWhere } from './own-where';
import type { SerialCase } from './serial-case';
import { serialLookOf } from './serial-look';
import { saidPlainly } from './told';
import type { AnswerOption, NextEvidence, SerialVerdict } from './types';
import { say } from './words';

const MOST = 5;

/** What a number may be that doesn't fit the rest. Of makers without tables any number is unknown, and nothing is odd. */
const ODD: ReadonlySet<SerialVerdict> = new Set(['another-model', 'another-year', 'misread', 'bad-form']);

/**
 * What would settle it, in words; the question to the seller in the advert's language. Where the number doesn't fit what
 * the advert says, a look at the number itself comes first; where all is as good as sure it is what is left to look at.
 */
export function nextEvidenceOf(auditCase: AuditCase): NextEvidence[] {
  const { identified, answers, listing, serial } = auditCase;
  if (!identified) return [];
  const { evidence, order } = identified;
  if (evidence.field.hypotheses.length < 2) return [];
  const leader = evidence.field.hypotheses[order[0]!]!.model;
  const asked = { atHand: listing.byHand, told: saidPlainly(auditCase) };
  const features = nextEvidence(identified, answers, MOST, asked).map((one) => inWords(one, leader, listing.language));
  const isOdd = serial !== null && (ODD.has(serial.verdict) || isLeftOut(auditCase, serial));
  if (!isOdd && features.length > 0) return features;
  return [...serialLookOf(auditCase, leader), ...features].slice(0, MOST);
}

/** A table that calls itself complete leaves the number out. */
function isLeftOut({ knowledge, reading }: AuditCase, { verdict, claim }: SerialCase): boolean {
  const own = knowledge.serials.schemesOf(claim.normal).filter(({ pack }) => reading.covering.has(pack));
  return verdict === 'unknown' && own.some(({ scheme }) => scheme.complete);
}

function inWords({ leaves, bits, effort }: Telling, leader: ModelKnown | null, language: string | null): NextEvidence {
  const { attribute } = leaves;
  const { def } = attribute;
  const name = say(def.label);
  const where = ownWhere(leader, attribute) ?? def.where;
  return {
    attribute: attribute.ref,
    name,
    bits,
    effort,
    ask: def.ask ? localText(def.ask, language) : localText(askTexts.attribute(name), language),
    where: where ? say(where) : texts.where,
    see: def.see ? say(def.see) : null,
    place: def.place ?? null,
    options: [...leaves.covers.keys()].map((value): AnswerOption => optionOf(value, leaves)),
  };
}

function optionOf(value: string | boolean, leaves: Telling['leaves']): AnswerOption {
  const { def } = leaves.attribute;
  const explain = def.kind === 'choice' ? def.values.find((one) => one.id === value)?.explain : undefined;
  return { value, text: valueText(value, leaves), explain: explain ? say(explain) : null };
}
