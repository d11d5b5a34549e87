import { readMoney } from '../../quantity/money';
import type { Candidate, FieldNote, Price, PriceHow, SourceName } from '../types';
import { rounded } from './groups';

interface Read {
  candidate: Candidate;
  /** Decimal strings: the reading, and another one where the point may part thousands. */
  amounts: string[];
  currency: string | null;
  how: PriceHow;
  /** As written. */
  text: string;
}

export interface SettledPrice {
  price: Price;
  text: string;
  note: FieldNote;
}

/** From this weight on a number on the page is taken for the price against what machines are told. */
const PLAINLY_SHOWN = 0.5;
/** Page numbers below this are no rivals worth telling: some other figure on the page. */
const WORTH_TELLING = 0.45;
/** Once page and machines agree, only such another one on the page is worth telling. */
const WORTH_TELLING_STILL = 0.6;
/** A longer text is a sentence around the price. */
const PRICE_MOST = 60;

/**
 * Decides the price, by the first reason that holds:
 * 1. what the page shows and what it tells machines agree;
 * 2. the page shows one plainly (label, class, place): it is what a buyer is asked to pay;
 * 3. machines are told one; 4. the page shows some amount.
 * What lost and differs is kept as an alternative. Null where nothing reads as money. `home`: what a sign that several
 * currencies share means on this page, or null.
 */
export function settlePrice(
  candidates: Candidate[],
  language: string | null,
  home: string | null = null,
): SettledPrice | null {
  const reads = candidates.map((candidate) => readOne(candidate, language, home)).filter((read) => read !== null);
  const shown = reads.filter(({ candidate }) => isShown(candidate.source)).sort(byWeight);
  const nonzero = reads.filter(({ candidate, amounts }) => !isShown(candidate.source) && Number(amounts[0]) > 0);
  // Machines are told "0" where a template had nothing to fill in.
  const told = (
    nonzero.length > 0 ? nonzero : reads.filter(({ candidate }) => !isShown(candidate.source) && shown.length === 0)
  ).sort(byWeight);

  let winner: Read | undefined;
  let confidence = 0;
  const agreeing = shown.find((one) => told.some((other) => agree(one, other)));
  const best = shown[0];
  if (agreeing && (agreeing === best || agreeing.candidate.weight >= 0.3)) {
    winner = agreeing;
    confidence = agreeing === best || agreeing.candidate.weight > best!.candidate.weight - 0.25 ? 0.95 : 0.8;
  } else if (best && best.candidate.weight >= PLAINLY_SHOWN) {
    winner = best;
    confidence = told.length > 0 ? 0.5 : Math.min(0.9, best.candidate.weight);
  } else if (told[0]) {
    winner = told[0];
    confidence = best ? 0.55 : told.slice(1).some((other) => agree(winner!, other)) ? 0.85 : 0.75;
  } else if (best) {
    winner = best;
    confidence = Math.min(0.7, best.candidate.weight);
  }
  if (!winner) return null;

  const decided = winner;
  const supporters = reads.filter((other) => agree(decided, other));
  // Of two readings of one figure ("1.340") the one that others share.
  const amount =
    decided.amounts.find((one) =>
      supporters.some((other) => other !== decided && other.amounts.some((its) => equal(its, one))),
    ) ?? decided.amounts[0]!;
  const currency = decided.currency ?? supporters.find((other) => other.currency)?.currency ?? onlyCurrency(told);
  const how =
    decided.how !== 'asking' ? decided.how : (supporters.find((other) => other.how !== 'asking')?.how ?? 'asking');
  const rivals = reads
    .filter((other) => !agree(decided, other))
    .filter(
      ({ candidate, amounts }) =>
        Number(amounts[0]) > 0 &&
        (candidate.source !== 'page' || candidate.weight >= (agreeing ? WORTH_TELLING_STILL : WORTH_TELLING)),
    )
    .sort(byWeight)
    .filter((other, index, all) => all.findIndex((earlier) => agree(earlier, other)) === index);
  return {
    price: { amount, currency, how },
    text: decided.text,
    note: {
      source: decided.candidate.source,
      confidence: rounded(confidence),
      alternatives: rivals.slice(0, 8).map(({ text, candidate }) => ({ value: text, source: candidate.source })),
    },
  };
}

const isShown = (source: SourceName): boolean => source === 'page' || source === 'draft';
const byWeight = (a: Read, b: Read): number => b.candidate.weight - a.candidate.weight;
const equal = (a: string, b: string): boolean => Number(a) === Number(b);

function agree(a: Read, b: Read): boolean {
  if (a.currency && b.currency && a.currency !== b.currency) return false;
  return a.amounts.some((one) => b.amounts.some((other) => equal(one, other)));
}

function onlyCurrency(told: Read[]): string | null {
  const all = new Set(told.map(({ currency }) => currency).filter((currency) => currency !== null));
  return all.size === 1 ? [...all][0]! : null;
}

const withCode = ({ value, currency }: Candidate): string =>
  currency && /^[\d.,\s]+$/.test(value) ? `${value} ${currency}` : value;

function readOne(candidate: Candidate, language: string | null, home: string | null): Read | null {
  const { value, source } = candidate;
  const stated = candidate.currency ?? null;
  const bare = value.trim();
  // schema.org: digits with a full stop as the decimal point and nothing else. Many write their own language's instead.
  if (!isShown(source) && /^\d{1,15}(?:\.\d{1,6})?$/.test(bare)) {
    const amounts = [tidied(bare)];
    if (/^\d{1,3}\.\d{3}$/.test(bare)) amounts.push(bare.replace('.', ''));
    return { candidate, amounts, currency: stated, how: candidate.how ?? 'asking', text: withCode(candidate) };
  }
  const money = readMoney(value, { currency: stated ?? home, language });
  if (!money) return null;
  const how = candidate.how ?? money.how;
  const text = !isShown(source) ? withCode(candidate) : value.length > PRICE_MOST ? money.quote : value;
  return { candidate, amounts: [money.amount], currency: money.currency ?? stated, how, text };
}

const tidied = (digits: string): string => digits.replace(/^0+(?=\d)/, '');
