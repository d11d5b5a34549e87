import type { NameClaim, Reading, SerialClaim } from '../claims/reading';
import type { Knowledge } from '../pack/knowledge';
import { misreadings } from '../pack/misreadings';
import type { Scheme } from '../pack/schema/serials';
import type { Run } from '../pack/serials/run';
import type { RunReport, SerialReport, SerialVerdict } from './types';
import { yearsBesides, yearsDisagree } from './years';

/** One serial of the advert, held against the tables. */
export interface SerialCase {
  claim: SerialClaim;
  runs: Run[];
  verdict: SerialVerdict;
  suggestions: { normal: string; runs: Run[] }[];
  /** The forms that the claimed maker's serials have, where they are known. */
  forms: { pack: string; scheme: Scheme }[];
  /** The number is surely of a maker that the pack knows: it has letters, or the advert names a thing of that pack. */
  usable: boolean;
}

export function serialCase(claim: SerialClaim, reading: Reading, knowledge: Knowledge): SerialCase {
  const named = packsNamed(reading);
  const runs = knowledge.serials
    .find(claim.normal)
    .filter((run) => reading.covering.has(run.pack) || named.has(run.pack));
  const usable = runs.some((run) => hasLetters(run.scheme) || named.has(run.pack));
  const forms = makersForms(reading, knowledge);
  const base = { claim, runs, suggestions: [], forms, usable };
  if (runs.length > 0) return { ...base, verdict: verdictOf(runs, usable, reading) };
  if (knowledge.serials.schemesOf(claim.normal).some(({ pack }) => reading.covering.has(pack)))
    return { ...base, verdict: 'unknown' };
  if (named.size === 0) return { ...base, verdict: 'unknown' };
  const suggestions = misreadings(claim.normal, knowledge, named);
  if (suggestions.length > 0) return { ...base, suggestions, verdict: 'misread' };
  return { ...base, verdict: forms.length > 0 ? 'bad-form' : 'unknown' };
}

/** The number, or the names that say whose it is, are not said for certain: "174000? I read it as 171500". */
export function isGuessed({ claim }: SerialCase, names: readonly NameClaim[]): boolean {
  return claim.doubted === true || names.every((name) => name.stance === 'guesses');
}

function verdictOf(runs: readonly Run[], usable: boolean, reading: Reading): SerialVerdict {
  if (!usable) return 'fits';
  const claimed = new Set(reading.claimedModels.filter((model) => !model.isType).map((model) => model.ref));
  const own = claimed.size > 0 ? runs.filter((run) => run.models.some((model) => claimed.has(model))) : runs;
  if (own.length === 0) return 'another-model';
  const isAnother = yearsDisagree(own, reading).length > 0 && yearsBesides(own, reading).length === 0;
  return isAnother ? 'another-year' : 'fits';
}

/** The packs whose models, families or makers the advert names. */
function packsNamed(reading: Reading): Set<string> {
  const packs = new Set<string>();
  for (const { of } of reading.names) {
    if ('model' in of) packs.add(of.model.pack);
    else if ('family' in of) packs.add(of.family.pack);
    else for (const pack of reading.covering) packs.add(pack);
  }
  return packs;
}

function hasLetters(scheme: Scheme): boolean {
  return /[A-Z]/.test(scheme.prefix + (scheme.suffix ?? ''));
}

/** The schemes of the claimed model's maker. */
function makersForms(reading: Reading, knowledge: Knowledge): { pack: string; scheme: Scheme }[] {
  const makers = new Set<string>();
  const add = (maker: string | undefined): void => {
    if (maker) makers.add(maker.toLowerCase());
  };
  for (const model of reading.claimedModels) {
    add(model.def.maker);
    add(model.family?.def.maker);
  }
  add(reading.claimedFamily?.def.maker);
  return knowledge.serials.schemes.filter(({ scheme }) => scheme.maker && makers.has(scheme.maker.toLowerCase()));
}

/** The serial that decides: one that the advert calls so and that the tables know, else the first that it calls so. */
export function deciding(serials: readonly SerialCase[]): SerialCase | null {
  const rank = (one: SerialCase): number =>
    (one.claim.doubted ? -8 : 0) +
    (one.claim.stated ? 2 : 0) +
    (one.runs.length > 0 ? 4 : 0) +
    (one.suggestions.length > 0 ? 1 : 0);
  return [...serials].sort((a, b) => rank(b) - rank(a))[0] ?? null;
}

export function serialReport(one: SerialCase | null): SerialReport {
  if (!one) return { asWritten: null, normal: null, verdict: 'none', runs: [], suggestions: [] };
  return {
    asWritten: one.claim.quote,
    normal: one.claim.normal,
    verdict: one.verdict,
    runs: one.runs.map(runReport),
    suggestions: one.suggestions.map(({ normal, runs }) => ({
      normal,
      models: [...new Set(runs.flatMap((run) => run.models))],
      year: runs[0]?.year ?? null,
    })),
  };
}

function runReport({ pack, entry, models, year, first, last, source }: Run): RunReport {
  return { pack, entry, models, year, first, last, source };
}
