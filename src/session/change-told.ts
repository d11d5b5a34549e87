import { localText } from '../pack/local-text';
import type { Attribute } from '../pack/schema/attributes';
import type { Pack } from '../pack/schema/index';
import type { LocalText } from '../pack/schema/parts';
import type { Change } from '../sharing/propose/changes';
import { isObject, type Json, type JsonObject } from '../sharing/propose/json';
import { changesTold as texts } from '../text/catalogue/changes-told';

export type ChangeKind = 'added' | 'changed' | 'removed' | 'moved';

/** What became of one field, as words; null: nothing stood or stands there. */
export interface FieldTold {
  field: string;
  was: string | null;
  now: string | null;
}

/** What became of one entry. */
export interface EntryTold {
  kind: ChangeKind;
  part: string;
  entry: string;
  /** As people call it. */
  name: string;
  fields: FieldTold[];
}

export interface ChangesTold {
  counts: Record<ChangeKind, number>;
  /** The first of them; what is removed or changed before what is new. */
  entries: EntryTold[];
  /** How many more there are. */
  more: number;
}

/** More than these nobody reads at once. */
const MOST = 150;
const ORDER: readonly ChangeKind[] = ['removed', 'changed', 'added', 'moved'];
const KINDS = { add: 'added', change: 'changed', remove: 'removed', move: 'moved' } as const;

/**
 * Changes told entry by entry, in the words of the packs that they lead from and to.
 * @param before whose names count for what was there; @param after for names of what is new
 */
export function tellChanges(changes: readonly Change[], before: Pack, after: Pack): ChangesTold {
  const words = wordsOf([before, after]);
  const entries = new Map<string, EntryTold & { value: JsonObject | undefined }>();
  for (const change of changes) {
    // The edition's number is said elsewhere, and grows with each.
    if (change.part === 'about' && change.do === 'change' && change.field[0] === 'edition') continue;
    const key = JSON.stringify([change.part, change.entry]);
    const kind = KINDS[change.do];
    const value = change.do === 'add' ? change.value : change.do === 'remove' ? change.was : undefined;
    const told = entries.get(key) ?? { kind, part: change.part, entry: change.entry, name: '', fields: [], value };
    if (kind !== 'moved') told.kind = kind;
    if (change.do === 'change') told.fields.push(fieldTold(change.field, change.was, change.now, words));
    entries.set(key, told);
  }
  const all = [...entries.values()].sort((a, b) => ORDER.indexOf(a.kind) - ORDER.indexOf(b.kind));
  const counts = { added: 0, changed: 0, removed: 0, moved: 0 };
  for (const { kind } of all) counts[kind] += 1;
  const shown = all.slice(0, MOST).map(({ value, ...told }) => ({ ...told, name: nameOf(told, value, words) }));
  return { counts, entries: shown, more: all.length - shown.length };
}

/** How entries of a pack are called: by the part, their own name there, and what they are. */
export function entryNames(pack: Pack): (part: string, entry: string, value: JsonObject) => string {
  const words = wordsOf([pack]);
  return (part, entry, value) => nameOf({ part, entry }, value, words);
}

/** What a field is called. */
export function fieldLabel(pack: Pack, field: readonly string[]): string {
  const attribute = field.length > 1 ? pack.attributes?.find(({ id }) => id === lastPart(field[1] ?? '')) : undefined;
  return attribute ? localText(attribute.label, pack.about.language, 'en') : readable(field.at(-1) ?? '');
}

function fieldTold(field: readonly string[], was: Json | undefined, now: Json | undefined, words: Words): FieldTold {
  const attribute = field.length > 1 ? words.attributes.get(lastPart(field[1] ?? '')) : undefined;
  const name = attribute ? words.local(attribute.label) : readable(field.at(-1) ?? '');
  const said = (value: Json | undefined) => (value === undefined ? null : valueTold(value, attribute));
  return { field: name, was: said(was), now: said(now) };
}

/** A value as a person would say it; what has no short form is shown as it stands in the file. */
export function valueTold(value: Json, attribute?: Attribute): string {
  if (typeof value === 'boolean') return texts.yesNo(value);
  if (typeof value === 'number') return withUnit(String(value), attribute);
  if (typeof value === 'string') return choiceLabel(value, attribute);
  if (Array.isArray(value)) return value.map((each) => valueTold(each as Json, attribute)).join(', ');
  if (!isObject(value)) return JSON.stringify(value);
  if ('is' in value && value.is !== undefined) {
    const said = valueTold(value.is, attribute);
    return value.holds === 'usually' ? texts.usually(said) : said;
  }
  if ('text' in value && typeof value.text === 'string') return value.text;
  if ('from' in value || 'to' in value) return rangeTold(value, attribute);
  return JSON.stringify(value);
}

function rangeTold({ from, to }: JsonObject, attribute: Attribute | undefined): string {
  if (from === undefined) return withUnit(texts.to(String(to)), attribute);
  if (to === undefined) return withUnit(texts.from(String(from)), attribute);
  return withUnit(texts.range(String(from), String(to)), attribute);
}

function withUnit(said: string, attribute: Attribute | undefined): string {
  return attribute?.kind === 'measure' ? `${said} ${attribute.unit}` : said;
}

function choiceLabel(value: string, attribute: Attribute | undefined): string {
  const choice = attribute?.kind === 'choice' ? attribute.values.find(({ id }) => id === value) : undefined;
  return choice ? localText(choice.label, 'en') : value;
}

interface Words {
  attributes: ReadonlyMap<string, Attribute>;
  /** Labels of models, families, types and whatever else has one, by id. */
  labels: ReadonlyMap<string, string>;
  local(text: LocalText): string;
}

/** @param packs the one whose words count first comes first */
function wordsOf(packs: readonly Pack[]): Words {
  const attributes = new Map<string, Attribute>();
  const labels = new Map<string, string>();
  const local = (text: LocalText) => localText(text, packs[0]?.about.language ?? 'en', 'en');
  for (const pack of packs) {
    for (const attribute of pack.attributes ?? [])
      if (!attributes.has(attribute.id)) attributes.set(attribute.id, attribute);
    for (const { id, label } of [...(pack.models ?? []), ...(pack.families ?? []), ...(pack.types ?? [])])
      if (!labels.has(id)) labels.set(id, label);
  }
  return { attributes, labels, local };
}

function nameOf(
  { part, entry }: Pick<EntryTold, 'part' | 'entry'>,
  value: JsonObject | undefined,
  words: Words,
): string {
  if (part === 'serials.runs') {
    const [, first = '', last = ''] = entry.split('|');
    return texts.run(first, last);
  }
  if (part === 'prices.bands' || part === 'prices.observations') {
    const [model = '', ...rest] = entry.split('|');
    return [labelled(model, words), ...rest.filter(Boolean)].join(', ');
  }
  const label = value?.label;
  if (typeof label === 'string') return label;
  if (isObject(label)) return words.local(label as LocalText);
  return words.labels.get(entry) ?? readable(entry);
}

function labelled(reference: string, words: Words): string {
  return words.labels.get(lastPart(reference)) ?? readable(reference);
}

const lastPart = (reference: string) => reference.slice(reference.lastIndexOf('/') + 1);

/** "free-arm" -> "free arm", "mistakenFor" -> "mistaken for". */
function readable(key: string): string {
  return key.replace(/-/g, ' ').replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
}
