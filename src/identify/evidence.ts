import type { Reading } from '../claims/reading';
import type { Knowledge } from '../pack/knowledge';
import { TRUST } from './assumptions';
import type { NumberedIn } from './condition-share';
import { type Field, fieldOf } from './field';
import { heard } from './hearing';
import type { Leaves } from './leaves';
import { placeLogs, yearLogs } from './made-likelihood';
import { measureLogs } from './measure-likelihood';
import { type NamesHeard, namesHeard } from './names-heard';
import { type Said, saidIn, saidLikelihood } from './said';
import { serialEvidence } from './serial-likelihood';

/** What the viewer saw: attribute ref -> a value of it, or null for "can't tell". */
export type Answers = Readonly<Record<string, string | boolean | null>>;

/** What an advert or a viewer says of one attribute, as natural logarithms for each hypothesis; 0 where nothing. */
export interface AttributeEvidence {
  attribute: string;
  leaves: Leaves;
  said: readonly Said[];
  /** Likelihoods per leaf, or null. */
  claimed: Float64Array | null;
  seen: Float64Array | null;
  claimedLogs: Float64Array;
  seenLogs: Float64Array;
  /** Both at once, where the words are of the very thing that is seen. */
  bothLogs: Float64Array;
}

/** Everything that speaks for or against a hypothesis, ready to be added up. */
export interface Evidence {
  field: Field;
  names: NamesHeard;
  /** Natural logarithms per hypothesis, or null where the advert has no serial. */
  serial: Float64Array | null;
  numbered: ReadonlyMap<string, NumberedIn>;
  attributes: readonly AttributeEvidence[];
  /** What else a seller states, by its key: an attribute's ref, "year" or "place". */
  stated: ReadonlyMap<string, Float64Array>;
}

export interface Asked {
  reading: Reading;
  /** The serial that decides, or null. */
  serial: { normal: string; stated: boolean; doubted?: boolean } | null;
  answers: Answers;
}

export function evidenceOf({ reading, serial, answers }: Asked, knowledge: Knowledge): Evidence {
  const field = fieldOf(knowledge, reading.covering);
  const { hypotheses } = field;
  const number = serial && serialEvidence(serial, hypotheses, knowledge, reading.covering);
  const numbered = number?.numbered ?? new Map<string, NumberedIn>();
  const said = saidIn(reading, knowledge);
  const attributes: AttributeEvidence[] = [];
  for (const [attribute, leaves] of field.tables.attributes) {
    const words = said.filter((one) => one.attribute.ref === attribute);
    const claimed = saidLikelihood(words, leaves);
    const seen = seenLikelihood(answers[attribute], leaves);
    if (!claimed && !seen) continue;
    attributes.push({
      attribute,
      leaves,
      said: words,
      claimed,
      seen,
      ...logsOf(field, numbered, attribute, claimed, seen),
    });
  }
  const stated = measureLogs(reading, hypotheses);
  const years = yearLogs(reading, hypotheses);
  const places = placeLogs(reading, hypotheses);
  if (years) stated.set('year', years);
  if (places) stated.set('place', places);
  return { field, names: namesHeard(reading, field), serial: number?.logs ?? null, numbered, attributes, stated };
}

/** What the viewer saw of it; "can't tell" tells nothing. */
function seenLikelihood(answer: string | boolean | null | undefined, leaves: Leaves): Float64Array | null {
  if (answer === null || answer === undefined) return null;
  return heard(answer, false, leaves.attribute.def.trust?.eye ?? TRUST.eye, leaves);
}

function logsOf(
  field: Field,
  numbered: ReadonlyMap<string, NumberedIn>,
  attribute: string,
  claimed: Float64Array | null,
  seen: Float64Array | null,
): Pick<AttributeEvidence, 'claimedLogs' | 'seenLogs' | 'bothLogs'> {
  const table = field.tables.of(attribute);
  const size = field.hypotheses.length;
  const logs = {
    claimedLogs: new Float64Array(size),
    seenLogs: new Float64Array(size),
    bothLogs: new Float64Array(size),
  };
  const count = table.length / size;
  field.hypotheses.forEach(({ model }, h) => {
    const run = model && numbered.get(model.ref);
    const own = run ? field.tables.numbered(attribute, model, run) : null;
    let said = 0;
    let saw = 0;
    let both = 0;
    for (let leaf = 0; leaf < count; leaf++) {
      const share = own ? own[leaf]! : table[h * count + leaf]!;
      const heardHere = claimed ? claimed[leaf]! : 1;
      const seenHere = seen ? seen[leaf]! : 1;
      said += share * heardHere;
      saw += share * seenHere;
      both += share * heardHere * seenHere;
    }
    logs.claimedLogs[h] = Math.log(said);
    logs.seenLogs[h] = Math.log(saw);
    logs.bothLogs[h] = Math.log(both);
  });
  return logs;
}
