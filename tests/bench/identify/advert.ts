import { readClaims } from '../../../src/claims/read';
import type { NameClaim, Reading, ValueClaim } from '../../../src/claims/reading';
import type { Answers, Asked } from '../../../src/identify/evidence';
import { makerOf } from '../../../src/identify/field';
import { readDraft } from '../../../src/listing/draft';
import type { AttributeKnown, Knowledge, ModelKnown } from '../../../src/pack/knowledge';
import { normaliseSerial } from '../../../src/quantity/serials';

/** An advert as a simulator makes it: read already, so that only identification is measured. */
export interface Simulated {
  /** What it is: a position among the hypotheses. */
  truth: number;
  /** It is called by this model's name, or by this maker's. */
  model: ModelKnown | null;
  maker: string | null;
  claims: { attribute: AttributeKnown; value: string | boolean }[];
  serial: string | null;
  answers: Answers;
}

/** An advert that says nothing, of what these packs cover. */
export function blankReading(knowledge: Knowledge, covering: ReadonlySet<string>): Reading {
  return { ...readClaims(readDraft({ title: 'sewing machine' }), knowledge), covering };
}

export function askedOf(advert: Simulated, blank: Reading): Asked {
  const { model, maker, claims, serial, answers } = advert;
  const plain = {
    field: 'title',
    quote: '',
    start: 0,
    end: 0,
    stance: 'says',
    subject: 'this',
    trigger: null,
  } as const;
  const of = model ? { model } : maker === null ? null : { maker, pack: '' };
  const names = of ? [{ ...plain, of, name: '', misspelt: false, identity: true } as unknown as NameClaim] : [];
  const values = claims.map((claim) => ({ ...plain, pack: '', ...claim }) as unknown as ValueClaim);
  return {
    reading: { ...blank, names, values, claimedModels: model ? [model] : [] },
    serial: serial === null ? null : { normal: normaliseSerial(serial), stated: true },
    answers,
  };
}

export function makerNamed(model: ModelKnown | null): string | null {
  return (model && !model.isType && makerOf(model)) || null;
}
