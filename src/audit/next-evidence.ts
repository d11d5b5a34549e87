import { nextEvidence, type Telling } from '../identify/next-evidence';
import type { AttributeKnown, ModelKnown } from '../pack/knowledge';
import { localText } from '../pack/local-text';
import { identifyTexts as texts } from '../text/catalogue/identify';
import type { AuditCase } from './case';
import { valueText } from './ground-words';
import type { AnswerOption, NextEvidence } from './types';
import { say } from './words';

const MOST = 5;

/** What would settle it, in words; the question to the seller in the advert's language. */
export function nextEvidenceOf({ identified, answers, listing }: AuditCase): NextEvidence[] {
  if (!identified) return [];
  const { evidence, order } = identified;
  if (evidence.field.hypotheses.length < 2) return [];
  const leader = evidence.field.hypotheses[order[0]!]!.model;
  return nextEvidence(identified, answers, MOST, listing.byHand).map((one) => inWords(one, leader, listing.language));
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
    ask: def.ask ? localText(def.ask, language) : texts.ask(name),
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

/** Where to look on this very model, where its pack says that it differs. */
function ownWhere(model: ModelKnown | null, attribute: AttributeKnown) {
  const own = Object.entries(model?.def.where ?? {}).find(
    ([ref]) => ref === attribute.ref || ref === attribute.id || `${model!.pack}/${ref}` === attribute.ref,
  );
  return own?.[1];
}
