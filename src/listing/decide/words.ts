import { bare, isCutOff, isQuestion } from '../bare';
import { cutTo } from '../tidy';
import type { Candidate, FieldNote, SourceName } from '../types';
import { type Group, grouped, noteOf, rounded } from './groups';

const TITLE_MOST = 500;
const DESCRIPTION_MOST = 20_000;

/** Where a page tells machines what it sells; a summary in the head is less. */
const TELLING: ReadonlySet<SourceName> = new Set(['json-ld', 'microdata', 'rdfa', 'state']);

/** So many times as long is more than what a site adds of its own. */
const MUCH = 1.3;

/** Letters and digits of the words that an advert says, at least, where they are to go before what machines are told. */
const SHOWN_WORDS_LEAST = 160;

/** A seller's words, though no label says so. */
const LOOSE_LEAST = 60;

/** Letters and digits with which two writings of one text begin. */
const SAME_LEAST = 32;

/** Soon says an amount beside a sign or code of a currency, or ends with it: " for £45", ", 1962, oak, 45,00 €". */
const PRICED = /^[^\d\n.!?]{0,30}(?:[€$£]\s?\d|\d[\d., ]*(?:[€$£]|[A-Z]{3}\b|kr\b|zł))|(?:[€$£]\s?[\d.,]+|\d\s?[€$£])$/;

/** Weight of a summary that is the site's own line around the title: it says nothing of the thing. */
export const OF_SITE = 0.1;

/** Shown words that weigh less are facts alone. */
const WORDS_LEAST = 0.45;

/** A line of the page that may be its title. */
const SHOWN_LEAST = 0.35;

export interface SettledText {
  text: string;
  note: FieldNote;
}

/**
 * The title: the value for which most speaks, headings and machine-read names counted together; printed as the page
 * prints it. A value that is only the beginning of another counts for that one.
 */
export function settleTitle(candidates: Candidate[]): SettledText | null {
  const titles = candidates.map((candidate) => ({
    ...candidate,
    value: cutTo(candidate.value.replaceAll('\n', ' '), TITLE_MOST),
  }));
  const keys = [...new Set(titles.map(({ value }) => bare(value)))];
  const keyOf = (candidate: Candidate): string => {
    const own = bare(candidate.value);
    // The head adds the place and the like to what the page shows by itself.
    if (candidate.source === 'meta') {
      const shown = titles
        .filter(({ source, weight }) => source === 'page' && weight >= SHOWN_LEAST)
        .map(({ value }) => bare(value))
        .filter((key) => own.startsWith(key) && key.length >= own.length * 0.5);
      if (shown.length > 0 && !shown.includes(own)) return shown.sort((a, b) => b.length - a.length)[0]!;
    }
    if (!isCutOff(candidate.value) || own.length < 8) return own;
    return keys.find((key) => key.length > own.length && key.startsWith(own)) ?? own;
  };
  const [winner, ...losers] = grouped(
    titles.filter(({ value }) => bare(value) !== ''),
    keyOf,
  );
  if (!winner) return null;
  const printed =
    winner.members.find(({ source, value }) => source === 'page' && !isCutOff(value)) ??
    winner.members.find(({ value }) => !isCutOff(value)) ??
    winner.members[0]!;
  // What only differs by words added (a site's own additions) is no other title.
  const key = keyOf(printed);
  const rivals = losers.filter(({ members }) => {
    const other = keyOf(members[0]!);
    return (
      members.some(({ source }) => source !== 'page' || members[0]!.weight >= 0.7) &&
      !other.includes(key) &&
      !key.includes(other)
    );
  });
  return { text: printed.value, note: noteOf(winner, printed.source, rivals) };
}

/**
 * The description, by the first reason that holds:
 * 1. a block on the page that is labelled as one, or that shows what machines are told, with what belongs to it: the
 *    seller's words as they are shown; unless machines are told all of it and much more;
 * 2. what machines are told, unless it is no more than the summary in the head; 3. the block that shows that summary, or
 * has most prose; 4. the summary.
 */
export function settleDescription(candidates: Candidate[], title: string): SettledText | null {
  const texts = candidates
    .map((candidate) => ({
      candidate: { ...candidate, value: cutTo(candidate.value, DESCRIPTION_MOST) },
      key: bare(candidate.value),
    }))
    // "TBD" stands where words will.
    .filter(({ key }) => key.length > 3 && key !== bare(title))
    .sort((a, b) => b.candidate.weight - a.candidate.weight);
  type Text = (typeof texts)[number];
  const shown = texts.filter(({ candidate }) => candidate.source === 'page' || candidate.source === 'draft');
  /** The site's own line around the title and the price, shown nowhere: "Hand crank for £45. Free delivery". */
  const isOfOffer = ({ key, candidate: { value } }: Text) =>
    title !== '' &&
    key.length < SHOWN_WORDS_LEAST &&
    PRICED.test(value.split(title)[1] ?? '') &&
    !shown.some((one) => one.key.includes(key));
  const told = texts.filter(
    (text) => TELLING.has(text.candidate.source) && !isOfOffer(text) && !isQuestion(text.candidate.value),
  );
  const summaries = texts.filter(({ candidate }) => candidate.source === 'meta');

  const teller = told[0];
  const called = shown.filter(({ candidate }) => candidate.weight >= 0.7);
  // Of several that are called so alike the one that machines are told.
  const first = called[0];
  const labelled =
    called.find((one) => one.key === teller?.key && one.candidate.weight === first?.candidate.weight) ?? first;
  // More than the page shows under its label: it folds the rest away.
  const isMore =
    labelled && teller && teller.key.length > labelled.key.length * MUCH && teller.key.includes(labelled.key);
  // A site's line about the page, told in two places and shown in none, beside words that are shown.
  const isOfSite =
    teller &&
    summaries.some(({ key }) => key === teller.key) &&
    (shown[0]?.key.length ?? 0) > Math.max(SHOWN_WORDS_LEAST, teller.key.length * MUCH);
  // A shop that tells machines no more than the title has nothing to say: short lines elsewhere are the site's own.
  const saysNoMore = told.length === 0 && candidates.some(({ source }) => TELLING.has(source));
  const least = saysNoMore ? (texts.some(isOfOffer) ? SHOWN_WORDS_LEAST : LOOSE_LEAST) : 0;
  const loose = shown.filter(({ key }) => key.length >= least);
  // Told cut off, and then written anew: the page shows what came of it, to its end.
  const isOfOld =
    teller &&
    isCutOff(teller.candidate.value) &&
    shown.find(({ key }) => key.length > teller.key.length && isContinuedBy(teller.key.slice(0, SAME_LEAST), key));
  const winner =
    (isMore ? teller : labelled) ??
    (isOfOld || (isOfSite ? shown[0] : teller)) ??
    loose.find(({ candidate }) => candidate.weight >= WORDS_LEAST) ??
    summaries.find((text) => text.candidate.weight > OF_SITE && !(saysNoMore && isOfOffer(text))) ??
    loose[0];
  if (!winner) return null;

  // What is shown cut off may be told to its end.
  const whole =
    isCutOff(winner.candidate.value) && [...told, ...summaries].find(({ key }) => isContinuedBy(winner.key, key));
  const decided = whole || winner;
  const agrees = ({ key }: Text) => decided.key.includes(key) || key.includes(decided.key);
  const supporters = texts.filter((other) => agrees(other));
  const rivals = texts.filter(
    (other) => !agrees(other) && (other.candidate.source !== 'page' || other.candidate.weight >= 0.7),
  );
  const isSupported = supporters.some(({ candidate }) => candidate.source !== decided.candidate.source);
  const confidence =
    Math.max(decided.candidate.weight, isSupported ? 0.95 : 0) *
    (rivals.some(({ candidate }) => candidate.source !== 'meta') ? 0.6 : 1);
  return {
    text: decided.candidate.value,
    note: {
      source: decided.candidate.source,
      confidence: rounded(confidence),
      alternatives: rivals
        .slice(0, 4)
        .map(({ candidate }) => ({ value: cutTo(candidate.value, 500), source: candidate.source })),
    },
  };
}

const isContinuedBy = (beginning: string, key: string): boolean =>
  key.length > beginning.length && key.startsWith(beginning);

/** What makes two writings of a place one: its name, without postal code, region and country. */
const placeKey = (text: string): string => bare(text.split(/[,(/]/)[0]!.replace(/\S*\d\S*/g, '')) || bare(text);
/** Two page writings of one place weigh about the same: the fuller is taken. */
const ABOUT = 0.15;

/**
 * A short field that is one of few words: what the page says in words before the words of a vocabulary. Of a place all
 * that name the same one count together, and the page's fullest writing is taken.
 */
export function settleWords(candidates: Candidate[], field: 'condition' | 'place'): SettledText | null {
  const short = candidates.map((candidate) => ({
    ...candidate,
    value: cutTo(candidate.value.replaceAll('\n', ' '), TITLE_MOST),
  }));
  const groups: Group[] = grouped(
    short.filter(({ value }) => bare(value) !== ''),
    ({ value }) => (field === 'place' ? placeKey(value) : bare(value)),
  );
  const fromPage = groups.find(({ members }) =>
    members.some(({ source, weight }) => source === 'page' && weight >= 0.7),
  );
  const winner = fromPage ?? groups[0];
  if (!winner) return null;
  const shown = winner.members.filter(({ source }) => source === 'page');
  const printed =
    shown
      .filter(({ weight }) => weight >= shown[0]!.weight - ABOUT)
      .sort((one, other) => other.value.length - one.value.length || other.weight - one.weight)[0] ??
    winner.members[0]!;
  const key = bare(printed.value);
  const rivals = groups.filter((group) => {
    const other = bare(group.members[0]!.value);
    return group !== winner && !key.includes(other) && !other.includes(key);
  });
  return { text: printed.value, note: noteOf(winner, printed.source, rivals) };
}
