import type { Knowledge, ModelKnown } from '../pack/knowledge';
import { misreadings } from '../pack/misreadings';
import type { Scheme } from '../pack/schema/serials';
import type { Run } from '../pack/serials/run';
import { FORMS, GAP, MISREAD, NOT_THE_SERIAL, OTHER_FORM, UNSTATED, WRONG_READINGS } from './assumptions';
import type { NumberedIn } from './condition-share';
import { type Field, type Hypothesis, makerOf } from './field';

/** A number as the advert or a person gives it: normalised, whether it is called the serial, and whether that is doubted. */
export interface SerialSaid {
  normal: string;
  stated: boolean;
  doubted?: boolean;
  /** Somebody has seen that it reads so. */
  seen?: boolean;
}

/** What a serial says of each hypothesis. */
export interface SerialEvidence {
  /** Natural logarithms. */
  logs: Float64Array;
  /** Models in whose runs it lies, with the narrowest run. */
  numbered: Map<string, NumberedIn>;
  /** Models to one of whose numbers it is close enough for a slip, with that number. */
  slips: Map<string, string>;
  /** If it is this one: how likely the number is the machine's own, and rightly read. */
  asWritten: Float64Array;
}

/**
 * How likely this number is on each. Every machine of a model has one of its numbers, so a number in its runs is the
 * likelier the fewer were made; one outside of them is a gap or a slip; one of a form that its maker doesn't use is
 * rather another maker's, whose numbers may be any.
 */
export function serialEvidence(
  serial: SerialSaid,
  field: Field,
  knowledge: Knowledge,
  covering: ReadonlySet<string>,
): SerialEvidence {
  const { normal } = serial;
  const runs = knowledge.serials.find(normal).filter((run) => covering.has(run.pack));
  const matching = knowledge.serials.schemesOf(normal).filter(({ pack }) => covering.has(pack));
  const slips = runs.length > 0 ? [] : misreadings(normal, knowledge, covering);
  const numbered = numberedIn(runs, matching);
  const slipsOf = countEach(slips.flatMap((slip) => [...new Set(slip.runs.flatMap((run) => run.models))]));
  const makers = makersOf(field, knowledge);
  const anyone = anyMakers(normal);
  const astray = astrayOf(serial);
  const misread = serial.seen ? 0 : MISREAD;
  const asWritten = new Float64Array(field.hypotheses.length);
  const logs = Float64Array.from(field.hypotheses, ({ model }, h) => {
    const schemes = model && !model.isType ? makers.schemesOf(model) : [];
    let chance = anyone;
    let wrong = 0;
    if (model && schemes.length > 0) {
      const made = model.def.number ?? UNSTATED.number;
      if (numbered.has(model.ref)) chance = (1 - misread - GAP.open) / made;
      else {
        const own = matching.filter(({ scheme }) => schemes.includes(scheme));
        const gap = own.some(({ scheme }) => !scheme.complete) ? GAP.open : own.length > 0 ? GAP.complete : 0;
        const near = own.length > 0 ? misread / makers.madeBy(model) : 0;
        const slip = (misread * (slipsOf.get(model.ref) ?? 0)) / WRONG_READINGS / made;
        wrong = near + slip;
        chance = gap / makers.madeBy(model) + wrong + OTHER_FORM * anyone;
      }
    }
    const whole = (1 - astray) * chance + astray * anyone;
    asWritten[h] = ((1 - astray) * (chance - wrong)) / whole;
    return Math.log(whole);
  });
  const near = slips.flatMap(({ normal: meant, runs: of }) =>
    of.flatMap((run) => run.models.map((ref) => [ref, meant] as const)),
  );
  return { logs, numbered, slips: new Map(near.reverse()), asWritten };
}

function astrayOf({ seen, doubted, stated }: SerialSaid): number {
  if (seen) return NOT_THE_SERIAL.seen;
  return doubted ? NOT_THE_SERIAL.doubted : stated ? NOT_THE_SERIAL.called : NOT_THE_SERIAL.uncalled;
}

/** The narrowest run of each model with the number in its scheme; runs come narrowest first. */
function numberedIn(
  runs: readonly Run[],
  matching: readonly { pack: string; scheme: Scheme; number: number }[],
): Map<string, NumberedIn> {
  const out = new Map<string, NumberedIn>();
  for (const run of runs) {
    const number = matching.find(({ scheme }) => scheme === run.scheme)?.number;
    if (number === undefined) continue;
    for (const model of run.models) if (!out.has(model)) out.set(model, { run, number });
  }
  return out;
}

/** How likely a maker of whom nothing is known has this number: by its letters and digits alone. */
function anyMakers(normal: string): number {
  const letters = (normal.match(/[A-Z]/g) ?? []).length;
  const digits = (normal.match(/\d/g) ?? []).length;
  const form =
    letters === 0 ? FORMS.digitsOnly : ((1 - FORMS.digitsOnly) / FORMS.letterCounts) * 26 ** -Math.min(letters, 12);
  return (form / FORMS.digitCounts) * 10 ** -Math.min(digits, 20);
}

function countEach(refs: readonly string[]): Map<string, number> {
  const out = new Map<string, number>();
  for (const ref of refs) out.set(ref, (out.get(ref) ?? 0) + 1);
  return out;
}

const kept = new WeakMap<Field, Makers>();

function makersOf(field: Field, knowledge: Knowledge): Makers {
  const there = kept.get(field);
  if (there) return there;
  const made = new Makers(knowledge, field.hypotheses);
  kept.set(field, made);
  return made;
}

/** Which schemes are of a model's maker, and how many things that maker made. */
class Makers {
  readonly #schemes = new Map<string, Scheme[]>();
  readonly #made = new Map<string, number>();

  constructor(knowledge: Knowledge, hypotheses: readonly Hypothesis[]) {
    for (const { pack, scheme } of knowledge.serials.schemes) {
      const key = keyOf(pack, scheme.maker);
      this.#schemes.set(key, [...(this.#schemes.get(key) ?? []), scheme]);
    }
    for (const { model } of hypotheses) {
      if (!model || model.isType) continue;
      const key = keyOf(model.pack, makerOf(model));
      this.#made.set(key, (this.#made.get(key) ?? 0) + (model.def.number ?? UNSTATED.number));
    }
  }

  schemesOf(model: ModelKnown): readonly Scheme[] {
    return this.#schemes.get(keyOf(model.pack, makerOf(model))) ?? [];
  }

  madeBy(model: ModelKnown): number {
    return this.#made.get(keyOf(model.pack, makerOf(model))) ?? UNSTATED.number;
  }
}

function keyOf(pack: string, maker: string | undefined): string {
  return `${pack}/${maker?.toLowerCase() ?? ''}`;
}
