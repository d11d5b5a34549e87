import type { NameClaim } from '../../claims/reading';
import { allowedBy } from '../../pack/compile/facts';
import type { AttributeKnown, Knowledge, Meaning } from '../../pack/knowledge';
import type { Wording } from '../../pack/schema/wording';
import { explainTexts } from '../../text/catalogue/explain';
import { attributeOf } from '../attribute-of';
import { allowedText, say, valueLabel } from '../words';
import type { Claim } from './claims';

const texts = explainTexts.means;

/** What a claim says, in words: "frame: cast iron", "made 1954". */
export function meansOf(one: Claim, knowledge: Knowledge): string {
  const { what, claim } = one;
  switch (what) {
    case 'value':
      return valueText(claim.attribute, claim.value);
    case 'wording':
      return wordingText(claim.entry, claim.pack, knowledge);
    case 'name':
      return nameText(claim.of);
    case 'measure':
      return texts.of(
        say(claim.attribute.def.label),
        allowedText(claim.attribute, { kind: 'range', from: claim.low, to: claim.high }),
      );
    case 'year':
      return texts.year[claim.kind](String(claim.from), claim.to === claim.from ? null : String(claim.to));
    case 'age':
      return texts.age(claim.atLeast);
    case 'count':
      return texts.count(claim.most);
    case 'place':
      return texts.place(claim.place);
    case 'fit':
      return texts.fit(one.models);
    case 'serial':
      return texts.serial(claim.normal);
    case 'grade':
      return texts.grade(say(claim.entry.label));
    case 'factor':
      return texts.factor(say(claim.entry.label));
    case 'caution':
      return texts.caution(claim.entry.id);
  }
}

/** What a pack's phrase stands for, claimed or not. */
export function meaningText(meaning: Meaning, knowledge: Knowledge): string {
  switch (meaning.kind) {
    case 'value':
      return valueText(meaning.attribute, meaning.value);
    case 'wording':
    case 'unless':
      return wordingText(meaning.entry, meaning.pack, knowledge);
    case 'measured':
      return say(meaning.attribute.def.label);
    case 'caution':
      return texts.caution(meaning.entry.id);
    case 'grade':
      return texts.grade(say(meaning.entry.label));
    case 'factor':
      return texts.factor(say(meaning.entry.label));
    case 'place':
      return texts.place(meaning.place);
    case 'fit':
      return texts.fit([meaning.model.label]);
    default:
      return texts.noun[meaning.kind];
  }
}

export function nameText(of: NameClaim['of']): string {
  if ('maker' in of) return texts.maker(of.maker);
  return 'model' in of ? texts.model(of.model.label) : texts.family(of.family.def.label);
}

function valueText(attribute: AttributeKnown, value: string | boolean): string {
  const shown =
    typeof value === 'string' ? valueLabel(attribute, value) : allowedText(attribute, { kind: 'yes-no', value });
  return texts.of(say(attribute.def.label), shown);
}

function wordingText(entry: Wording, pack: string, knowledge: Knowledge): string {
  const { means } = entry;
  if (!means) return entry.never ? texts.never : entry.mind ? texts.mind : texts.term;
  if ('made' in means) return texts.made(means.made.from ?? null, means.made.to ?? null);
  if ('ageAtLeast' in means) return texts.age(means.ageAtLeast);
  if ('madeUnder' in means) return texts.count(means.madeUnder);
  const attribute = attributeOf(means.attribute, pack, knowledge);
  if (!attribute) return texts.mind;
  const allowed =
    'is' in means
      ? allowedBy(means.is, attribute)
      : ({
          kind: 'range',
          from: means.atLeast ?? Number.NEGATIVE_INFINITY,
          to: means.atMost ?? Number.POSITIVE_INFINITY,
        } as const);
  return allowed ? texts.of(say(attribute.def.label), allowedText(attribute, allowed)) : texts.mind;
}
