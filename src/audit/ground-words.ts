import type { Reading } from '../claims/reading';
import type { Evidence } from '../identify/evidence';
import type { Weighed } from '../identify/grounds';
import type { Leaves } from '../identify/leaves';
import { limitKey } from '../identify/limit-words';
import type { AttributeKnown, ModelKnown } from '../pack/knowledge';
import { findingTexts } from '../text/catalogue/findings';
import { identifyTexts as texts } from '../text/catalogue/identify';
import { thatCanHold } from './follows';
import type { Ground } from './types';
import { say, valueLabel } from './words';
import { yearsClaimed } from './years';

/** What the words of a ground are made of. */
export interface Told {
  reading: Reading;
  evidence: Evidence;
  /** The serial that decides, as written. */
  serial: string | null;
  answers: Readonly<Record<string, string | boolean | null>>;
  /** Described by somebody who has the thing before them, not by an advert. */
  byHand: boolean;
}

/**
 * One piece of evidence in words, as it speaks for or against a model, a type or (null) none of them; null where words
 * would mislead: that an advert calls a thing by its own name may weigh less than what else its seller tells of it, and
 * then counts below 0, but nobody would take it for a reason against.
 */
export function groundOf(weighed: Weighed, model: ModelKnown | null, told: Told): Ground | null {
  const { piece, bits } = weighed;
  if (piece.kind === 'name' && bits < 0 && isItsName(model, told.reading)) return null;
  return { text: textOf(weighed, model, told), bits };
}

function textOf({ piece, bits }: Weighed, model: ModelKnown | null, told: Told): string {
  switch (piece.kind) {
    case 'prior':
      return priorText(model, bits > 0);
    case 'serial':
      return serialText(model, bits > 0, told);
    case 'name':
      return nameText(told, model, bits > 0);
    case 'stated':
      return statedText(piece.attribute, model, told);
    case 'claimed':
    case 'seen': {
      const one = told.evidence.attributes.find(({ attribute }) => attribute === piece.attribute);
      if (!one) return '';
      const { leaves } = one;
      const name = say(leaves.attribute.def.label);
      const heard = piece.kind === 'seen' ? [{ value: told.answers[piece.attribute] ?? '', denied: false }] : one.said;
      const values = heard.map(({ value, denied }) =>
        denied && typeof value === 'string'
          ? texts.not(valueText(value, leaves))
          : valueText(denied ? !value : value, leaves),
      );
      const said = piece.kind === 'seen' ? texts.seen(name, values.join()) : texts.claimed(name, values, told.byHand);
      const known = knownText(model, leaves.attribute, values, told.evidence);
      const isBorneOut = bits < 0 && heard.length > 0 && heard.every((each) => bearsOut(model, leaves, each));
      return texts.join(said, isBorneOut ? texts.join(known, texts.nextFitsBetter) : known);
    }
  }
}

/** The advert gives the thing this model's own name. */
function isItsName(model: ModelKnown | null, { claimedModels, claimedFamily }: Reading): boolean {
  if (!model) return false;
  return claimedModels.includes(model) || (claimedModels.length === 0 && model.family === claimedFamily);
}

/** The name that decided: the model's, else the family's, else the maker's; else one that is denied. */
function nameText({ reading, byHand }: Told, model: ModelKnown | null, isFor: boolean): string {
  const { names, claimedModels, claimedFamily } = reading;
  const meant = names.filter(
    ({ subject, stance }) => subject === 'this' && (stance === 'says' || stance === 'guesses'),
  );
  const decided =
    meant.find(({ of }) => 'model' in of && claimedModels.includes(of.model)) ??
    meant.find(({ of }) => 'family' in of && of.family === claimedFamily) ??
    meant[0];
  if (decided) {
    const isOthers = isFor && claimedModels.length > 0 && model !== null && !isItsName(model, reading);
    return (isOthers ? texts.name.takenFor : texts.name.called)(decided.quote, byHand);
  }
  const denied = names.find(({ stance }) => stance === 'denies');
  return denied ? texts.name.denied(denied.quote, byHand) : texts.name.none;
}

/** Of one maker's model packs know a number; how many of a kind were made anybody can but guess. */
function priorText(model: ModelKnown | null, more: boolean): string {
  if (model?.def.number !== undefined && !model.isType)
    return (more ? texts.prior.commoner : texts.prior.rarer)(model.def.number.toLocaleString('en-GB'));
  if (model === null) return more ? texts.prior.kindCommoner : texts.prior.kindRarer;
  return more ? texts.prior.moreLikely : texts.prior.lessLikely;
}

function serialText(model: ModelKnown | null, isFor: boolean, { evidence, serial }: Told): string {
  const shown = serial ?? '';
  if (!model || model.isType) return texts.serial.anyMaker(shown);
  if (evidence.numbered.has(model.ref)) return texts.serial.inRuns(shown);
  const slip = evidence.slips.get(model.ref);
  if (slip !== undefined) return texts.serial.slip(shown, slip);
  return (isFor ? texts.serial.itsForm : texts.serial.outside)(shown);
}

function statedText(key: string, model: ModelKnown | null, told: Told): string {
  const { reading, evidence, byHand } = told;
  if (key === 'year') return yearText(model, told);
  if (key === 'place') return placeText(model, told);
  const attribute = evidence.field.attributes.find(({ ref }) => key === ref || key === limitKey(ref));
  if (!attribute) return key;
  const name = say(attribute.def.label);
  const measure = reading.measures.find((one) => one.attribute === attribute && one.subject === 'this');
  const word = reading.wordings.find(
    ({ entry: { means }, subject, stance }) =>
      subject === 'this' && stance === 'says' && means && ('atMost' in means || 'atLeast' in means),
  );
  const quote = (attribute.ref === key ? measure : word)?.quote ?? name;
  const said = texts.claimed(name, [texts.quoted(quote)], byHand);
  return texts.join(said, knownText(model, attribute, [], evidence));
}

function yearText(model: ModelKnown | null, { reading, byHand }: Told): string {
  const said = texts.claimed(texts.year, [texts.quoted(yearsClaimed(reading)[0]?.quote ?? '')], byHand);
  const { from = null, to = null } = model?.def.made ?? {};
  const isKnown = from !== null || to !== null;
  return texts.join(said, isKnown ? texts.years(findingTexts.ageWords.years(from, to)) : texts.knownNothing);
}

function placeText(model: ModelKnown | null, { reading, byHand }: Told): string {
  const quote = reading.places.find(({ subject }) => subject === 'this')?.quote ?? '';
  const said = texts.claimed(texts.place, [texts.quoted(quote)], byHand);
  const places = model?.def.places ?? [];
  return texts.join(said, places.length > 0 ? texts.places(findingTexts.claimFact.or(places)) : texts.knownNothing);
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

/** What is known of it, with conditions where they are open. */
function knownText(
  model: ModelKnown | null,
  attribute: AttributeKnown,
  said: readonly string[],
  evidence: Evidence,
): string {
  const facts = model ? thatCanHold(model, attribute, evidence) : [];
  const [first] = facts;
  if (!first) return texts.knownNothing;
  if (facts.length === 1 && said.length === 1 && first.text === said[0])
    return first.fact.always ? texts.knownToo : texts.usuallyToo;
  const values = [...new Set(facts.map(({ fact, text }) => (fact.always ? text : texts.usually(text))))];
  return texts.known(values.join('; '));
}
