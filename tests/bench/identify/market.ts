import { TRUST } from '../../../src/identify/assumptions';
import type { Field } from '../../../src/identify/field';
import type { Leaves } from '../../../src/identify/leaves';
import type { Knowledge, ModelKnown } from '../../../src/pack/knowledge';
import { writtenIn } from '../../../src/pack/serial-form';
import type { Run } from '../../../src/pack/serials/run';
import { makerNamed, type Simulated } from './advert';
import type { Chance } from './chance';
import { leafOf, toldAs } from './own-model';

/**
 * Adverts of a market that identification doesn't suppose: careful sellers; sellers who copy the whole feature list of
 * another advert that they found, with its omissions and its mistakes; and sellers who, once wrong, go on being wrong.
 * Numbers are misread, and sometimes a sister's. The figures are assumptions of this simulator alone.
 */
export const SELLERS = { careful: 0.5, copier: 0.3, muddled: 0.2 };
export const NAMES = { own: 0.45, mistaken: 0.1, maker: 0.2, none: 0.25 };
export const PASSED_OFF = 0.05;
const NUMBERS = { shown: 0.35, misread: 0.04, sisters: 0.02 };
const CANT_TELL = 0.1;
/** How often a careful seller mentions a feature, a muddled one does, and a copier keeps it; how he errs. */
export const LISTS = { careful: 0.35, muddled: 0.4, kept: 0.8, named: 0.8, sameKind: 0.5, begins: 0.6, goesOn: 0.7 };

export function market(
  field: Field,
  knowledge: Knowledge,
  chance: Chance,
  asked: number,
  truth = drawn(field, chance),
) {
  const model = field.hypotheses[truth]!.model;
  const named = nameOf(field, truth, chance);
  const shown = chance.happens(NUMBERS.shown);
  const own = new Map(
    [...field.tables.attributes].map(([ref, leaves]) => [ref, leafOf(field, ref, leaves, truth, chance)]),
  );
  const advert: Simulated = {
    truth,
    ...named,
    claims: listOf(field, truth, named.model, own, chance),
    serial: shown ? serialOf(model, field, knowledge, chance) : null,
    answers: {},
  };
  const refs = chance.shuffled([...field.tables.attributes.keys()]).slice(0, asked);
  return { ...advert, answers: Object.fromEntries(refs.map((ref) => [ref, answerOf(field, ref, own, chance)])), own };
}

export function drawn({ logPrior }: Field, chance: Chance): number {
  return chance.weighted(logPrior.map(Math.exp));
}

export function answerOf(field: Field, ref: string, own: ReadonlyMap<string, number>, chance: Chance) {
  const leaves = field.tables.attributes.get(ref)!;
  if (chance.happens(CANT_TELL)) return null;
  return toldAs(own.get(ref)!, leaves.attribute.def.trust?.eye ?? TRUST.eye, leaves, chance);
}

function nameOf(field: Field, truth: number, chance: Chance): Pick<Simulated, 'model' | 'maker'> {
  const model = field.hypotheses[truth]!.model;
  const makers = makerNamed(model);
  if (!model || makers === null) {
    const other = chance.happens(PASSED_OFF) ? alike(field, model, chance) : null;
    return { model: other, maker: makerNamed(other) };
  }
  const kind = chance.weighted(Object.values(NAMES));
  if (kind === 0) return { model, maker: makers };
  if (kind === 1) {
    const rates = model.def.mistakenFor ?? [];
    const at = rates.length > 0 ? field.positionOf(rates[chance.below(rates.length)]!.model, model.pack) : undefined;
    const other = at === undefined ? alike(field, model, chance) : field.hypotheses[at]!.model;
    return { model: other, maker: makerNamed(other) };
  }
  return { model: null, maker: kind === 2 ? makers : null };
}

function alike(field: Field, model: ModelKnown | null, chance: Chance): ModelKnown | null {
  const from = alikeTo(field, model);
  return from[chance.weighted(from.map((one) => one.def.number ?? 1))] ?? null;
}

/** Other models of makers, of the same type where there are any. */
export function alikeTo(field: Field, model: ModelKnown | null): ModelKnown[] {
  const ownType = model?.isType ? model.ref : model?.def.type;
  const type = model && field.positionOf(ownType, model.pack);
  const known = field.hypotheses.flatMap(({ model: one }) => (one && !one.isType && one !== model ? [one] : []));
  const same = known.filter((one) => type !== undefined && field.positionOf(one.def.type, one.pack) === type);
  return same.length > 0 ? same : known;
}

function listOf(
  field: Field,
  truth: number,
  named: ModelKnown | null,
  own: ReadonlyMap<string, number>,
  chance: Chance,
): Simulated['claims'] {
  const kind = chance.weighted(Object.values(SELLERS));
  const all = [...field.tables.attributes];
  if (kind === 0) return careful(all, own, LISTS.careful, chance);
  if (kind === 1) {
    const namedAt = named && chance.happens(LISTS.named) ? field.positionOf(named.ref, named.pack) : undefined;
    const other = namedAt ?? (chance.happens(LISTS.sameKind) ? truth : drawn(field, chance));
    const theirs = new Map(all.map(([ref, leaves]) => [ref, leafOf(field, ref, leaves, other, chance)]));
    return careful(all, theirs, LISTS.careful, chance).filter(() => chance.happens(LISTS.kept));
  }
  let wrong = false;
  return all.flatMap(([ref, leaves]) => {
    if (!chance.happens(LISTS.muddled)) return [];
    const trust = leaves.attribute.def.trust?.seller ?? TRUST.seller;
    wrong = chance.happens(wrong ? LISTS.goesOn : (1 - trust) * LISTS.begins);
    return [{ attribute: leaves.attribute, value: toldAs(own.get(ref)!, wrong ? 0 : 1, leaves, chance) }];
  });
}

function careful(
  all: readonly (readonly [string, Leaves])[],
  values: ReadonlyMap<string, number>,
  mentions: number,
  chance: Chance,
): Simulated['claims'] {
  return all.flatMap(([ref, leaves]) => {
    if (!chance.happens(mentions)) return [];
    const trust = leaves.attribute.def.trust?.seller ?? TRUST.seller;
    return [{ attribute: leaves.attribute, value: toldAs(values.get(ref)!, trust, leaves, chance) }];
  });
}

function serialOf(model: ModelKnown | null, field: Field, knowledge: Knowledge, chance: Chance): string | null {
  const other = chance.happens(NUMBERS.sisters) ? alike(field, model, chance) : model;
  const runs = other && !other.isType ? runsOf(other.ref, knowledge) : [];
  if (runs.length === 0) {
    const letters = chance.happens(0.4) ? String.fromCharCode(65 + chance.below(26)) : '';
    return letters + String(10 ** (4 + chance.below(4)) + chance.below(10 ** (4 + chance.below(4))));
  }
  const run = runs[chance.weighted(runs.map((one) => one.lastNumber - one.firstNumber + 1))]!;
  const written = writtenIn(run.scheme, run.firstNumber + chance.below(run.lastNumber - run.firstNumber + 1));
  if (!chance.happens(NUMBERS.misread)) return written;
  const digits = [...written].flatMap((character, i) => (/\d/.test(character) ? [i] : []));
  const at = digits[chance.below(digits.length)]!;
  return written.slice(0, at) + String(chance.below(10)) + written.slice(at + 1);
}

/** The runs that name a model, in order of their numbers. */
function runsOf(model: string, { serials }: Knowledge): Run[] {
  const all = serials.schemes.flatMap(({ pack, scheme }) =>
    serials.around(pack, scheme.id, 0, Number.POSITIVE_INFINITY),
  );
  return all.filter(({ models }) => models.includes(model));
}
