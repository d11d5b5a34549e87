import type { Reading } from '../claims/reading';
import type { Evidence } from '../identify/evidence';
import type { Weighed } from '../identify/grounds';
import type { Leaves } from '../identify/leaves';
import { limitKey } from '../identify/limit-words';
import type { ModelKnown } from '../pack/knowledge';
import { identifyTexts as texts } from '../text/catalogue/identify';
import type { Ground } from './types';
import { allowedText, say, valueLabel } from './words';

/** What the words of a ground are made of. */
export interface Told {
  reading: Reading;
  evidence: Evidence;
  /** The serial that decides, as written. */
  serial: string | null;
  answers: Readonly<Record<string, string | boolean | null>>;
}

/** One piece of evidence in words, as it speaks for or against a model, a type or (null) none of them. */
export function groundOf({ piece, bits }: Weighed, model: ModelKnown | null, told: Told): Ground {
  return { text: textOf({ piece, bits }, model, told), bits };
}

function textOf({ piece, bits }: Weighed, model: ModelKnown | null, told: Told): string {
  switch (piece.kind) {
    case 'prior':
      return priorText(model, bits > 0);
    case 'serial':
      return serialText(model, told);
    case 'name':
      return nameText(told.reading);
    case 'stated':
      return statedText(piece.attribute, told);
    case 'claimed':
    case 'seen': {
      const one = told.evidence.attributes.find(({ attribute }) => attribute === piece.attribute);
      if (!one) return '';
      const name = say(one.leaves.attribute.def.label);
      const said =
        piece.kind === 'seen'
          ? texts.seen(name, valueText(told.answers[piece.attribute] ?? '', one.leaves))
          : one.said
              .map(({ value, denied }) =>
                (denied ? texts.claimedNot : texts.claimed)(name, valueText(value, one.leaves)),
              )
              .join(' ');
      const known = knownText(model, one.leaves);
      const heard = piece.kind === 'seen' ? [{ value: told.answers[piece.attribute] ?? '', denied: false }] : one.said;
      const isBorneOut = bits < 0 && heard.length > 0 && heard.every((each) => bearsOut(model, one.leaves, each));
      return texts.join(said, isBorneOut ? texts.join(known, texts.nextFitsBetter) : known);
    }
  }
}

/** The name that decided: the model's, else the family's, else the maker's; else one that is denied. */
function nameText({ names, claimedModels, claimedFamily }: Reading): string {
  const meant = names.filter(
    ({ subject, stance }) => subject === 'this' && (stance === 'says' || stance === 'guesses'),
  );
  const decided =
    meant.find(({ of }) => 'model' in of && claimedModels.includes(of.model)) ??
    meant.find(({ of }) => 'family' in of && of.family === claimedFamily) ??
    meant[0];
  if (decided) return texts.name.called(decided.quote);
  const denied = names.find(({ stance }) => stance === 'denies');
  return denied ? texts.name.denied(denied.quote) : texts.name.none;
}

function priorText(model: ModelKnown | null, more: boolean): string {
  if (model?.def.number !== undefined)
    return (more ? texts.prior.commoner : texts.prior.rarer)(model.def.number.toLocaleString('en-GB'));
  if (model?.isType !== false) return more ? texts.prior.kindCommoner : texts.prior.kindRarer;
  return more ? texts.prior.moreLikely : texts.prior.lessLikely;
}

function serialText(model: ModelKnown | null, { evidence, serial }: Told): string {
  const shown = serial ?? '';
  if (!model || model.isType) return texts.serial.anyMaker(shown);
  return (evidence.numbered.has(model.ref) ? texts.serial.inRuns : texts.serial.outside)(shown);
}

function statedText(key: string, { reading, evidence }: Told): string {
  if (key === 'year') return texts.year;
  if (key === 'place') return texts.place;
  const attribute = evidence.field.attributes.find(({ ref }) => key === ref || key === limitKey(ref));
  const name = attribute ? say(attribute.def.label) : key;
  if (attribute?.ref === key) return texts.measure(name);
  const word = reading.wordings.find(
    ({ entry: { means }, subject, stance }) =>
      subject === 'this' && stance === 'says' && means && ('atMost' in means || 'atLeast' in means),
  );
  return texts.limit(word?.quote ?? name, name);
}

export function valueText(value: string | boolean, { attribute }: Leaves): string {
  return typeof value === 'boolean' ? (value ? texts.yes : texts.no) : valueLabel(attribute, value);
}

/** Every fact known of it says the same. */
function bearsOut(model: ModelKnown | null, { attribute }: Leaves, said: { value: string | boolean; denied: boolean }) {
  const facts = model?.facts.get(attribute.ref) ?? [];
  return (
    !said.denied &&
    facts.length > 0 &&
    facts.every(({ allowed }) =>
      allowed.kind === 'values'
        ? allowed.values.size === 1 && allowed.values.has(String(said.value))
        : allowed.kind === 'yes-no' && allowed.value === said.value,
    )
  );
}

function knownText(model: ModelKnown | null, { attribute }: Leaves): string {
  const facts = model?.facts.get(attribute.ref) ?? [];
  const values = [...new Set(facts.map((fact) => allowedText(attribute, fact.allowed)))];
  return values.length > 0 ? texts.known(values.join('; ')) : texts.knownNothing;
}
