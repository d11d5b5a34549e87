import type { Reading } from '../claims/reading';
import type { Knowledge } from '../pack/knowledge';
import { type AttributeEvidence, attributeEvidence } from './attribute-evidence';
import type { NumberedIn } from './condition-share';
import { type Field, fieldOf } from './field';
import { limitLogs } from './limit-words';
import { placeLogs, yearLogs } from './made-likelihood';
import { measureLogs } from './measure-likelihood';
import { type NamesHeard, namesHeard } from './names-heard';
import { saidIn } from './said';
import { type SerialSaid, serialEvidence } from './serial-likelihood';
import { serialLookedAt } from './serial-look';

/** What the viewer saw: attribute ref -> a value of it, or null for "can't tell". */
export type Answers = Readonly<Record<string, string | boolean | null>>;

/** Everything that speaks for or against a hypothesis, ready to be added up. */
export interface Evidence {
  field: Field;
  names: NamesHeard;
  /** Natural logarithms per hypothesis, or null where the advert has no serial. */
  serial: Float64Array | null;
  /** Models in whose runs the serial lies. */
  numbered: ReadonlyMap<string, NumberedIn>;
  /** Models to one of whose numbers the serial is close enough for a slip, with that number. */
  slips: ReadonlyMap<string, string>;
  /** If it is this one, how likely the serial is the machine's own, and rightly read; or null without a serial. */
  asWritten: Float64Array | null;
  attributes: readonly AttributeEvidence[];
  /** What else a seller states, by its key: a measure's ref, that of words that limit one, "year" or "place". Natural logarithms per hypothesis. */
  stated: ReadonlyMap<string, Float64Array>;
}

export interface Asked {
  reading: Reading;
  /** The serial that decides, or null. */
  serial: SerialSaid | null;
  answers: Answers;
  /** Described by somebody who has the thing before them: what is left out tells nothing. */
  byHand?: boolean | undefined;
}

export function evidenceOf({ reading, serial, answers, byHand }: Asked, knowledge: Knowledge): Evidence {
  const field = fieldOf(knowledge, reading.covering);
  const looked = serialLookedAt(serial, answers);
  const number = looked && serialEvidence(looked, field, knowledge, reading.covering);
  const numbered = number?.numbered ?? new Map<string, NumberedIn>();
  const said = saidIn(reading, knowledge);
  const attributes = [...field.tables.attributes].flatMap(([attribute, leaves]) => {
    const words = said.filter((one) => one.attribute.ref === attribute);
    return (
      attributeEvidence({ field, numbered, leaves, said: words, answer: answers[attribute] ?? null, byHand }) ?? []
    );
  });
  const stated = new Map([...measureLogs(reading, field), ...limitLogs(reading, field, knowledge)]);
  const years = yearLogs(reading, field.hypotheses);
  const places = placeLogs(reading, field.hypotheses);
  if (years) stated.set('year', years);
  if (places) stated.set('place', places);
  return {
    field,
    names: namesHeard(reading, field, byHand),
    serial: number?.logs ?? null,
    numbered,
    slips: number?.slips ?? new Map(),
    asWritten: number?.asWritten ?? null,
    attributes,
    stated,
  };
}
