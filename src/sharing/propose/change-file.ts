import * as z from 'zod/mini';
import type { Change } from './changes';
import type { Json, JsonObject } from './json';
import { isObject } from './json';
import { LISTS, nameOf, OBJECTS } from './parts';

z.config({ jitless: true });

const PARTS = [...LISTS, ...OBJECTS].map(({ name }) => name);
const Part = z.string().check(z.refine((part) => PARTS.includes(part)));
const Name = z.string().check(z.maxLength(4000));
const Value = z.custom<Json>((value) => value !== undefined);
const Entry = z.custom<JsonObject>(isObject);
const Field = z.array(z.string()).check(z.minLength(1), z.maxLength(2));
const Follows = z.nullable(Name);

/** A change as it stands in a proposal: written out, so that it can be read and weighed without the pack beside it. */
export const WrittenChange: z.ZodMiniType<Change> = z.discriminatedUnion('do', [
  z.strictObject({ do: z.literal('add'), part: Part, entry: Name, value: Entry, follows: Follows }),
  z.strictObject({ do: z.literal('remove'), part: Part, entry: Name, was: z.optional(Entry) }),
  z.strictObject({
    ...{ do: z.literal('change'), part: Part, entry: Name, field: Field },
    ...{ was: z.optional(Value), now: z.optional(Value) },
  }),
  z.strictObject({ do: z.literal('move'), part: Part, entry: Name, follows: Follows }),
]) as unknown as z.ZodMiniType<Change>;

/**
 * A change as it stands in an update, where the edition before is known by its hash and the one after by its seal, so
 * that neither has to be written out: ["+", part, value, follows, entry?], ["-", part, entry],
 * ["=", part, entry, field, now?] or [">", part, entry, follows]. `follows` 0: the entry of the change before. The entry
 * of an addition is written only where its value doesn't tell it.
 */
export const BriefChange = z.union([
  z.tuple([z.literal('+'), Part, Entry, z.union([Follows, z.literal(0)]), z.optional(Name)]),
  z.tuple([z.literal('-'), Part, Name]),
  z.tuple([z.literal('='), Part, Name, z.union([z.string(), Field]), z.optional(Value)]),
  z.tuple([z.literal('>'), Part, Name, z.union([Follows, z.literal(0)])]),
]);
export type BriefChange = z.infer<typeof BriefChange>;

const PART = new Map(LISTS.map((part) => [part.name, part]));

/** What an entry of this part is called by its value. */
function calledBy(part: string, value: JsonObject): string {
  const list = PART.get(part);
  return list ? nameOf(list, value) : '';
}

/**
 * Does a change do what it says? A new entry is called what its value says, no field of a name changes, and of what is no
 * list only fields do.
 */
export function isHonest(change: Change): boolean {
  const list = PART.get(change.part);
  if (!list) return change.do === 'change';
  if (change.do === 'change') return !list.naming.includes(change.field[0] ?? '');
  if (change.do !== 'add') return true;
  const name = nameOf(list, change.value);
  return (
    change.entry === name ||
    (change.entry.startsWith(`${name}#`) && /^[1-9]\d*$/.test(change.entry.slice(name.length + 1)))
  );
}

export function inBrief(changes: readonly Change[]): BriefChange[] {
  return changes.map((change, i) => {
    const isNext = 'follows' in change && change.follows !== null && change.follows === changes[i - 1]?.entry;
    return briefOf(change, isNext);
  });
}

/** @param isNext it follows the entry of the change before */
function briefOf(change: Change, isNext: boolean): BriefChange {
  const { part, entry } = change;
  switch (change.do) {
    case 'add': {
      const follows = isNext ? 0 : change.follows;
      const told = calledBy(part, change.value) === entry;
      return told ? ['+', part, change.value, follows] : ['+', part, change.value, follows, entry];
    }
    case 'remove':
      return ['-', part, entry];
    case 'move':
      return ['>', part, entry, isNext ? 0 : change.follows];
    case 'change': {
      const field = change.field.length === 1 ? change.field[0]! : [...change.field];
      return change.now === undefined ? ['=', part, entry, field] : ['=', part, entry, field, change.now];
    }
  }
}

export function fromBrief(brief: readonly BriefChange[]): Change[] {
  let last: string | null = null;
  return brief.map((one): Change => {
    const change = changeOf(one, last);
    last = change.entry;
    return change;
  });
}

function changeOf(one: BriefChange, last: string | null): Change {
  const part = one[1];
  switch (one[0]) {
    case '+': {
      const entry = one[4] ?? calledBy(part, one[2]);
      return { do: 'add', part, entry, value: one[2], follows: one[3] === 0 ? last : one[3] };
    }
    case '-':
      return { do: 'remove', part, entry: one[2] };
    case '>':
      return { do: 'move', part, entry: one[2], follows: one[3] === 0 ? last : one[3] };
    case '=': {
      const field = typeof one[3] === 'string' ? [one[3]] : one[3];
      const now = one[4];
      return { do: 'change', part, entry: one[2], field, ...(now === undefined ? {} : { now }) };
    }
  }
}
