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

/** "$40", and nothing on the page tells whose dollars: the amount may be right, the price is not known. */
const OPEN_MONEY = 0.75;
/** Page numbers below this are no rivals worth telling: some other figure on the page. */
const WORTH_TELLING = 0.45;
/** Once page and machines agree, only such another one on the page is worth telling. */
const WORTH_TELLING_STILL = 0.6;
/** A longer text is a sentence around the price. */
const PRICE_MOST = 60;

/**
 * Decides the price: the amount for which most speaks, by what the page shows (label, class, place), and less by what it
 * tells machines. What lost and differs is kept as an alternative. Null where nothing reads as money. `home`: what a sign
 * that several currencies share means on this page, or null.
 */
export function settlePrice(
  candidates: Candidate[],
  language: string | null,
  home: string | null = null,
): SettledPrice | null {
  const reads = candidates.map((candidate) => readOne(candidate, language, home)).filter((read) => read !== null);
  const shown = reads.filter(({ candidate }) => isShown(candidate.source)).sort(byWeight);
  // Machines are told "0" where a template had nothing to fill in: free is what says so on the page.
  const told = reads
    .filter(({ candidate, amounts }) => !isShown(candidate.source) && Number(amounts[0]) > 0)
    .sort(byWeight);

  const [winner, second] = [...shown, ...told]
    .filter((one, index, all) => all.findIndex((earlier) => agree(earlier, one)) === index)
    .map((read) => ({ read, ...standingOf(read, shown, told) }))
    .sort((a, b) => b.score - a.score);
  if (!winner) return null;
  const confidence = confidenceIn(winner, second ?? null, told.length > 0);

  const decided = winner.read;
  const agreeing = winner.told > 0 && winner.shown > 0;
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
      confidence: rounded(currency === null ? Math.min(confidence, OPEN_MONEY) : confidence),
      alternatives: rivals.slice(0, 8).map(({ text, candidate }) => ({ value: text, source: candidate.source })),
    },
  };
}

interface Standing {
  /** The greatest weight among what the page shows, and what machines are told, of this amount; 0 where they don't. */
  shown: number;
  told: number;
  score: number;
}

/** What machines are told counts by itself, or on top of what the page shows. */
const TOLD_BESIDE = 0.3;
const TOLD_ALONE = 0.5;

function standingOf(read: Read, shown: Read[], told: Read[]): Standing {
  const itsShown = shown.find((other) => agree(read, other))?.candidate.weight ?? 0;
  let doubt = 1;
  for (const other of told) if (agree(read, other)) doubt *= 1 - Math.min(0.95, other.candidate.weight);
  const itsTold = 1 - doubt;
  const score = itsShown > 0 ? itsShown + itsTold * TOLD_BESIDE : itsTold * TOLD_ALONE;
  return { shown: itsShown, told: itsTold, score };
}

/** How sure: most where page and machines agree and nothing else stands as plainly; little where they don't. */
function confidenceIn(winner: Standing, second: Standing | null, isTold: boolean): number {
  const lead = winner.score - (second?.score ?? 0);
  if (winner.shown > 0 && winner.told > 0) return lead >= 0.25 ? 0.95 : lead >= 0.1 ? 0.75 : 0.6;
  if (winner.shown > 0) {
    if (isTold) return Math.min(0.5, winner.shown);
    return Math.min(winner.shown, second === null ? 0.9 : lead >= 0.3 ? 0.78 : 0.65);
  }
  return second === null ? (winner.told > 0.93 ? 0.85 : 0.75) : 0.55;
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
