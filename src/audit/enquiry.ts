import type { Knowledge } from '../pack/knowledge';
import { misreadings } from '../pack/misreadings';
import type { Scheme } from '../pack/schema/serials';
import { formText } from '../pack/serial-form';
import type { Run } from '../pack/serials/run';
import { normaliseSerial } from '../quantity/serials';
import type { RunReport, SerialReport } from './types';

/**
 * What the tables say of a bare number. found: runs hold it; gap: it has the form of a maker's numbers, and no run
 * holds it; misread: it has no such form, a number easily confused with it does; bad-form: neither; none: no number.
 */
export type EnquiryVerdict = 'found' | 'gap' | 'misread' | 'bad-form' | 'none';

export interface EnquiredRun extends RunReport {
  place: string | null;
  /** How many numbers it has. */
  size: number;
  /** This run holds the number. */
  holds: boolean;
}

/** One maker's numbers around the one that is asked for, in order. */
export interface NumberLine {
  pack: string;
  scheme: string;
  maker: string | null;
  /** Every number of this maker is in the tables: one in no run was not allotted. */
  complete: boolean;
  /** Where the number stands in the order: it comes after so many of the runs, in a gap. Null where a run holds it. */
  gapAfter: number | null;
  runs: EnquiredRun[];
}

export interface NumberForm {
  pack: string;
  maker: string | null;
  /** "K + 5 digits" */
  form: string;
  where: string | null;
}

export interface Enquiry {
  normal: string;
  verdict: EnquiryVerdict;
  runs: EnquiredRun[];
  lines: NumberLine[];
  suggestions: SerialReport['suggestions'];
  /** How the numbers look that the tables know; only where this one looks like none of them. */
  forms: NumberForm[];
}

/** Neighbours drawn on either side, and the most runs that hold one number that are drawn. */
const EACH_SIDE = 3;
const MOST_HOLDING = 6;
const MOST_FORMS = 24;

/**
 * Looks a machine's number up by itself, without an advert around it.
 * @param serial as a person writes it: spaces, points, dashes and case don't matter
 * @param pack the id of the pack that is asked alone, or null for all of them
 */
export function enquire(serial: string, pack: string | null, knowledge: Knowledge): Enquiry {
  const normal = normaliseSerial(serial);
  const asked = (id: string) => pack === null || id === pack;
  const empty: Enquiry = { normal, verdict: 'none', runs: [], lines: [], suggestions: [], forms: [] };
  if (normal === '') return empty;
  const holding = knowledge.serials.find(normal).filter((run) => asked(run.pack));
  const schemes = knowledge.serials.schemesOf(normal).filter((one) => asked(one.pack));
  const runs = holding.map((run) => enquired(run, true));
  const found = schemes.filter((one) => holding.some((run) => isOf(run, one)));
  if (runs.length > 0)
    return { ...empty, verdict: 'found', runs, lines: found.map((one) => lineOf(one, holding, knowledge)) };
  const packs = new Set(knowledge.packs.map(({ id }) => id).filter(asked));
  const suggestions = misreadings(normal, knowledge, packs).map((meant) => ({
    normal: meant.normal,
    models: [...new Set(meant.runs.flatMap(({ models }) => models))],
    year: meant.runs[0]?.year ?? null,
  }));
  if (schemes.length > 0)
    return { ...empty, verdict: 'gap', suggestions, lines: schemes.map((one) => lineOf(one, [], knowledge)) };
  const forms = knowledge.serials.schemes.filter((one) => asked(one.pack));
  return {
    ...empty,
    suggestions,
    verdict: suggestions.length > 0 ? 'misread' : 'bad-form',
    forms: forms.slice(0, MOST_FORMS).map((one) => ({
      ...{ pack: one.pack, maker: one.scheme.maker ?? null },
      ...{ form: formText(one.scheme), where: one.scheme.where ?? null },
    })),
  };
}

interface Place {
  pack: string;
  scheme: Scheme;
  number: number;
}

function isOf(run: Run, { pack, scheme }: Place): boolean {
  return run.pack === pack && run.scheme.id === scheme.id;
}

function lineOf(place: Place, holding: readonly Run[], knowledge: Knowledge): NumberLine {
  const { pack, scheme, number } = place;
  const own = holding.filter((run) => isOf(run, place)).slice(0, MOST_HOLDING);
  const near = knowledge.serials.around(pack, scheme.id, number, EACH_SIDE);
  const all = [...new Map([...near, ...own].map((run) => [`${run.first} ${run.last} ${run.models}`, run])).values()];
  all.sort((a, b) => a.firstNumber - b.firstNumber || b.lastNumber - a.lastNumber);
  const isHolding = (run: Run) => run.firstNumber <= number && number <= run.lastNumber;
  return {
    pack,
    scheme: scheme.id,
    maker: scheme.maker ?? null,
    complete: scheme.complete === true,
    gapAfter: own.length > 0 ? null : all.filter((run) => run.lastNumber < number).length,
    runs: all.map((run) => enquired(run, isHolding(run))),
  };
}

function enquired(run: Run, holds: boolean): EnquiredRun {
  const { pack, entry, models, year, first, last, source, place, firstNumber, lastNumber } = run;
  return { pack, entry, models, year, first, last, source, place, size: lastNumber - firstNumber + 1, holds };
}
