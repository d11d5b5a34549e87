import { minorUnits } from '../quantity/currencies';
import { readMoney } from '../quantity/money';
import { MOST_AMOUNT, type Observation } from './observation';
import { dateOf } from './written-date';
import { isNegative } from './written-price';

/** An observation as somebody writes it, in a form or a row of a table; "" for what isn't said. */
export type Written = Record<ObservationField, string>;

export const OBSERVATION_FIELDS = [
  ...([
    'model',
    'kind',
    'amount',
    'currency',
    'date',
    'grade',
    'complete',
    'finish',
    'place',
    'seller',
    'link',
  ] as const),
  'note',
] as const;
export type ObservationField = (typeof OBSERVATION_FIELDS)[number];

export const NOTHING_WRITTEN = Object.fromEntries(OBSERVATION_FIELDS.map((field) => [field, ''])) as Written;

/** What is wrong with a field of it. */
export type FieldProblem = {
  field: ObservationField;
  wrong: 'missing' | 'unknown' | 'too-low' | 'too-high' | 'future' | 'form' | 'too-long';
};

/** What is to be known for reading one. */
export interface Writing {
  /** The ref of a model by its ref, id, label or a name; null where it is none or several. */
  modelOf: (written: string) => string | null;
  /** A grade's id by its id or label, in the pack of that model. */
  gradeOf: (written: string, model: string) => string | null;
  /** ISO 8601 date: nothing has been seen after it. */
  today: string;
}

const LONGEST = 500;
const KINDS = new Map<string, 'asked' | 'paid'>(
  Object.entries({
    ...{ asked: 'asked', asking: 'asked', ask: 'asked', listed: 'asked', gefordert: 'asked', demandé: 'asked' },
    ...{
      paid: 'paid',
      sold: 'paid',
      'sold for': 'paid',
      bezahlt: 'paid',
      verkauft: 'paid',
      payé: 'paid',
      vendu: 'paid',
    },
  } as const),
);
const YES_NO = new Map<string, boolean>(
  Object.entries({
    ...{ yes: true, y: true, true: true, '1': true, ja: true, oui: true, complete: true },
    ...{ no: false, n: false, false: false, '0': false, nein: false, non: false, incomplete: false },
  }),
);

/**
 * An observation from what is written of it.
 * @returns every field with which something is wrong, if any is
 */
export function observationOf(
  written: Written,
  { modelOf, gradeOf, today }: Writing,
): { ok: true; observation: Observation } | { ok: false; problems: FieldProblem[] } {
  const problems: FieldProblem[] = [];
  const wrong = (field: ObservationField, what: FieldProblem['wrong']): null => {
    problems.push({ field, wrong: what });
    return null;
  };
  const said = Object.fromEntries(OBSERVATION_FIELDS.map((field) => [field, written[field].trim()])) as Written;
  const model = said.model === '' ? wrong('model', 'missing') : (modelOf(said.model) ?? wrong('model', 'unknown'));
  const kind =
    said.kind === '' ? wrong('kind', 'missing') : (KINDS.get(said.kind.toLowerCase()) ?? wrong('kind', 'unknown'));
  const code = said.currency.toUpperCase();
  if (code !== '' && minorUnits(code) === null) wrong('currency', 'unknown');
  const money = said.amount === '' ? wrong('amount', 'missing') : moneyOf(said.amount, code, wrong);
  const currency = code || money?.currency || null;
  if (money && currency === null) wrong('currency', 'missing');
  const date = said.date === '' ? wrong('date', 'missing') : (dateOf(said.date) ?? wrong('date', 'form'));
  if (date && date > today) wrong('date', 'future');
  const grade = said.grade && model ? (gradeOf(said.grade, model) ?? wrong('grade', 'unknown')) : null;
  const complete = said.complete ? (YES_NO.get(said.complete.toLowerCase()) ?? wrong('complete', 'unknown')) : null;
  const finish = oneOf(said.finish, ['plain', 'refinished'] as const, () => wrong('finish', 'unknown'));
  const seller = oneOf(said.seller, ['private', 'trade'] as const, () => wrong('seller', 'unknown'));
  if (said.link && !/^https?:\/\/\S+$/i.test(said.link)) wrong('link', 'form');
  for (const field of ['place', 'link', 'note'] as const) if (said[field].length > LONGEST) wrong(field, 'too-long');
  if (problems.length > 0 || !model || !kind || !money || !currency || !date) return { ok: false, problems };
  return {
    ok: true,
    observation: {
      ...{ model, kind, amount: money.amount, currency, date },
      ...(grade ? { grade } : {}),
      ...(complete === null ? {} : { complete }),
      ...(finish ? { finish } : {}),
      ...(seller ? { seller } : {}),
      ...(said.place ? { place: said.place } : {}),
      ...(said.link ? { link: said.link } : {}),
      ...(said.note ? { note: said.note } : {}),
    },
  };
}

/** The same the other way round. */
export function writtenOf(seen: Observation): Written {
  return {
    ...NOTHING_WRITTEN,
    ...{ model: seen.model, kind: seen.kind, amount: String(seen.amount), currency: seen.currency, date: seen.date },
    ...{ grade: seen.grade ?? '', finish: seen.finish ?? '', seller: seen.seller ?? '', place: seen.place ?? '' },
    complete: seen.complete === undefined ? '' : seen.complete ? 'yes' : 'no',
    ...{ link: seen.link ?? '', note: seen.note ?? '' },
  };
}

type Wrong = (field: ObservationField, what: FieldProblem['wrong']) => null;

/** A number as programs write it. Three digits after a point are thousands as often: "1.340". */
const PLAIN = /^(?:0\.\d+|\d+(?:\.(?:\d{1,2}|\d{4,}))?)(?:e\d+)?$/i;

/** "£120", "1.340,50", "120": with the currency beside it where the amount is a bare number. */
function moneyOf(written: string, code: string, wrong: Wrong): { amount: number; currency: string | null } | null {
  if (isNegative(written)) return wrong('amount', 'too-low');
  const plain = PLAIN.test(written) ? { amount: written, currency: code || null } : null;
  const money = plain ?? readMoney(written, { currency: code || null }) ?? readMoney(`${code || 'GBP'} ${written}`);
  if (!money) return wrong('amount', 'form');
  const amount = Number(money.amount);
  if (!(amount > 0)) return wrong('amount', 'too-low');
  if (!(amount < MOST_AMOUNT)) return wrong('amount', 'too-high');
  const hasSign = plain === null && readMoney(written)?.currency;
  return { amount, currency: hasSign || code || null };
}

function oneOf<T extends string>(written: string, values: readonly T[], wrong: () => null): T | null {
  if (written === '') return null;
  return values.find((value) => value === written.toLowerCase()) ?? wrong();
}
