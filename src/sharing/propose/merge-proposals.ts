import type { PackIssue } from '../../pack/issues';
import { parsePack } from '../../pack/parse';
import type { Pack } from '../../pack/schema/index';
import { proposeTexts as texts } from '../../text/catalogue/propose';
import type { ChangeAnswer } from './answer';
import { applyChanges } from './apply-changes';
import { type Change, type Misfit, type MisfitReason, slotOf } from './changes';
import type { Json, JsonObject } from './json';
import { rebased } from './layer';
import { LISTS, OBJECTS } from './parts';
import type { Proposal } from './proposal';

/*
 * Promises: three-way merging by entry and field. Each change of each proposal is held against what the author saw and
 * what the pack says now. All that is proposed for one place stands in one row: one offer that fits is open; several
 * that differ, or one for a place that has changed since, are a conflict, shown together; what the pack says already is
 * told as such. The keeper accepts, edits or declines each with a reason; what nobody decided stays undecided and is
 * named. The order in which proposals come changes nothing. Pure.
 */

export interface Offer {
  change: Change;
  /** Which proposals offer exactly this, by their place in the list. */
  from: number[];
}

export interface Row {
  /** See slotOf: what the row is known by. */
  slot: string;
  part: string;
  entry: string;
  /** The field; null: the entry as a whole, or its place in the list. */
  field: readonly string[] | null;
  /** What the pack says now; left out: nothing. */
  here?: Json | undefined;
  offers: Offer[];
  /**
   * open: one offer, and it fits; already: the pack says it; conflict: offers that exclude each other, among them those
   * of the rows in `against`; outdated: what the author saw is no longer there.
   */
  state: 'open' | 'already' | 'conflict' | 'outdated';
  /** Why an outdated one doesn't fit. */
  reason: MisfitReason | null;
  /** Slots of other rows that can't be done as well: an entry is removed here and changed there. */
  against: string[];
}

/**
 * What of a row a decision is about, as text: what the pack says there, and all that is offered, whoever offers it. A
 * decision holds for that alone: one more proposal or another edition makes it another question.
 */
export function questionOf({ here, state, offers }: Row): string {
  return JSON.stringify([here ?? null, state, offers.map(({ change }) => textOf(change))]);
}

/** What proposals come to, held against the pack. Rows in the order of the pack's parts, then by entry and field. */
export function mergeRows(pack: Pack, proposals: readonly Pick<Proposal, 'changes'>[]): Row[] {
  const rows = new Map<string, Row>();
  for (const [from, { changes }] of proposals.entries())
    for (const change of changes) {
      const slot = slotOf(change);
      const { part, entry } = change;
      const field = change.do === 'change' ? change.field : null;
      const row = rows.get(slot) ?? { slot, part, entry, field, offers: [], state: 'open', reason: null, against: [] };
      rows.set(slot, row);
      const same = row.offers.find((offer) => offersSame(offer.change, change));
      if (same) same.from.push(from);
      else row.offers.push({ change, from: [from] });
    }
  const sorted = [...rows.values()].sort(byPlace);
  for (const row of sorted) row.offers.sort((a, b) => (textOf(a.change) < textOf(b.change) ? -1 : 1));
  holdAgainst(pack, sorted);
  opposeEntries(sorted);
  return sorted;
}

/** Two changes that come to the same, whatever their authors saw before. */
function offersSame(a: Change, b: Change): boolean {
  return textOf(a) === textOf(b);
}

function textOf(change: Change): string {
  const { was: _, ...rest } = change as Change & { was?: Json };
  return JSON.stringify(sortedKeys(rest as Json));
}

function sortedKeys(value: Json | undefined): Json | undefined {
  if (Array.isArray(value)) return value.map((one) => sortedKeys(one)!);
  if (typeof value !== 'object' || value === null) return value;
  const object = value as JsonObject;
  return Object.fromEntries(
    Object.keys(object)
      .sort()
      .map((key) => [key, sortedKeys(object[key])]),
  );
}

const ORDER = new Map([...OBJECTS, ...LISTS].map(({ name }, i) => [name, i]));

function byPlace(a: Row, b: Row): number {
  const parts = (ORDER.get(a.part) ?? 0) - (ORDER.get(b.part) ?? 0);
  if (parts !== 0) return parts;
  if (a.entry !== b.entry) return a.entry < b.entry ? -1 : 1;
  // The entry as a whole before its fields.
  if ((a.field === null) !== (b.field === null)) return a.field === null ? -1 : 1;
  return a.slot < b.slot ? -1 : 1;
}

const isWhole = ({ do: what }: Change): boolean => what === 'add' || what === 'remove';
const entryOf = ({ part, entry }: Change): string => `${part}\n${entry}`;

/** What each offer meets in the pack as it is. */
function holdAgainst(pack: Pack, rows: readonly Row[]): void {
  const offers = rows.flatMap((row) => row.offers.map((offer) => ({ row, offer })));
  const met = new Map<Change, Misfit | 'already'>();
  // One offer of each place at a time: an offer must not meet what another one has made.
  for (let turn = 0, left = offers.length; left > 0; turn++) {
    const these = rows.flatMap(({ offers: all }) => all[turn]?.change ?? []);
    // A change of a field must not miss its entry because another offer removes that.
    const whole = new Set(these.filter(isWhole).map(entryOf));
    const apart = (change: Change): boolean => !isWhole(change) && whole.has(entryOf(change));
    for (const some of [these.filter((change) => !apart(change)), these.filter(apart)]) {
      const { misfits, already } = applyChanges(pack, some);
      for (const misfit of misfits) met.set(misfit.change, misfit);
      for (const change of already) met.set(change, 'already');
    }
    left -= these.length;
  }
  for (const row of rows) {
    const outcomes = row.offers.map(({ change }) => met.get(change));
    const misfit = outcomes.find((one): one is Misfit => typeof one === 'object');
    if (misfit) Object.assign(row, { reason: misfit.reason }, misfit.here === undefined ? {} : { here: misfit.here });
    else {
      const [{ change }] = row.offers as [Offer];
      const was = 'was' in change ? change.was : undefined;
      const here = outcomes[0] === 'already' && change.do === 'change' ? change.now : was;
      if (here !== undefined) row.here = here;
    }
    if (row.offers.length > 1) row.state = 'conflict';
    else if (outcomes[0] === 'already') row.state = 'already';
    else if (misfit) row.state = 'outdated';
  }
}

/** An entry that one would remove or add as a whole, and another change a field of: both are in conflict. */
function opposeEntries(rows: readonly Row[]): void {
  const wholes = new Map<string, Row>();
  for (const row of rows)
    if (row.offers.some(({ change }) => isWhole(change))) wholes.set(entryOf(row.offers[0]!.change), row);
  for (const row of rows) {
    const whole = wholes.get(entryOf(row.offers[0]!.change));
    if (!whole || whole === row || whole.state === 'already' || row.state === 'already') continue;
    row.state = 'conflict';
    whole.state = 'conflict';
    row.against.push(whole.slot);
    whole.against.push(row.slot);
  }
}

/** What a keeper decides about a row. */
export type Decision =
  /** One of the row's offers, by its place; the others are declined for that reason. */
  | { do: 'accept'; offer: number; reason?: string }
  /** Something else in its place: a field's value, or an entry. Left out: nothing shall be there. */
  | { do: 'edit'; now?: Json | undefined; reason: string }
  | { do: 'decline'; reason: string };

export interface Merged {
  /** The pack with what was accepted and edited; not yet a new edition. */
  pack: Pack;
  /** What is wrong with it now, taken together: a reference to an entry that another proposal removes. */
  issues: PackIssue[];
  /** What to answer each proposal's author, in the order of the proposals. */
  answers: ChangeAnswer[][];
  /** Rows that nobody decided about. */
  undecided: Row[];
  /** Decisions that could not be carried out, with what stood in the way: two that exclude each other. */
  misfits: Misfit[];
}

/** Accepts all that is open or said already, and nothing in conflict. */
export function acceptWhatFits(rows: readonly Row[]): Map<string, Decision> {
  const fitting = rows.filter(({ state }) => state === 'open' || state === 'already');
  return new Map(fitting.map(({ slot }) => [slot, { do: 'accept', offer: 0 }]));
}

/** Carries out what was decided. @param decisions by the row's slot */
export function mergeProposals(
  pack: Pack,
  rows: readonly Row[],
  decisions: ReadonlyMap<string, Decision>,
  proposals: number,
): Merged {
  const changes: Change[] = [];
  const of = new Map<Change, Row>();
  for (const row of rows) {
    const decision = decisions.get(row.slot);
    for (const change of decision ? changesFor(row, decision) : []) {
      changes.push(change);
      of.set(change, row);
    }
  }
  const applied = applyChanges(pack, changes);
  const failed = new Set(applied.misfits.flatMap(({ change }) => of.get(change) ?? []));
  const answers = Array.from({ length: proposals }, (): ChangeAnswer[] => []);
  const undecided: Row[] = [];
  for (const row of rows) {
    const decision = decisions.get(row.slot);
    if (!decision || failed.has(row) || (decision.do === 'accept' && !row.offers[decision.offer])) {
      undecided.push(row);
      continue;
    }
    for (const [i, { change, from }] of row.offers.entries()) {
      const answer = answerTo(row, i, change, decision);
      for (const proposal of from) answers[proposal]?.push(answer);
    }
  }
  const { issues = [] } = parsePack(JSON.stringify(applied.pack));
  return { pack: applied.pack, issues, answers, undecided, misfits: applied.misfits };
}

function changesFor(row: Row, decision: Decision): Change[] {
  if (decision.do === 'decline') return [];
  const offered = decision.do === 'accept' ? row.offers[decision.offer]?.change : row.offers[0]?.change;
  if (!offered) return [];
  const change = decision.do === 'accept' ? offered : editedChange(offered, decision.now);
  if (change === null) return [];
  // The keeper sees what stands there now, and decides over that.
  return decision.do === 'accept' && (row.state === 'open' || row.state === 'already')
    ? [change]
    : rebased(change, { ...row, reason: row.reason ?? 'differs' });
}

/** The change with another outcome; null: nothing shall be done. */
function editedChange(change: Change, now: Json | undefined): Change | null {
  if (change.do === 'move') return null;
  const { part, entry } = change;
  if (change.do === 'change') {
    const { now: _, ...rest } = change;
    return now === undefined ? rest : { ...rest, now };
  }
  if (now === undefined) return change.do === 'remove' ? change : null;
  const follows = change.do === 'add' ? change.follows : null;
  return { do: 'add', part, entry, value: now as JsonObject, follows };
}

function answerTo({ slot, here }: Row, offer: number, change: Change, decision: Decision): ChangeAnswer {
  if (decision.do === 'decline') return { slot, outcome: 'declined', reason: decision.reason };
  if (decision.do === 'edit') {
    const now = change.do === 'move' ? here : decision.now;
    return { slot, outcome: 'edited', reason: decision.reason, ...(now === undefined ? {} : { now }) };
  }
  if (offer === decision.offer) return { slot, outcome: 'accepted', reason: '' };
  return { slot, outcome: 'declined', reason: decision.reason ?? texts.anotherTaken };
}
