import type { KeptDesk } from '../../keep/schema';
import { contentHash } from '../../pack/compiled/content-hash';
import type { Pack } from '../../pack/schema/index';
import type { Change } from '../../sharing/propose/changes';
import { isObject, type Json, type JsonObject } from '../../sharing/propose/json';
import {
  type Decision,
  type Merged,
  mergeProposals,
  mergeRows,
  questionOf,
  type Row,
} from '../../sharing/propose/merge-proposals';
import { type OpenedProposal, openProposal } from '../../sharing/propose/proposal';
import { changesTold as texts } from '../../text/catalogue/changes-told';
import { entryNames, fieldLabel, valueTold } from '../change-told';
import { isTypable, typedForm } from '../own/typed-value';
import type { DeskTold, RowTold } from './desk-told';

/** A desk with its proposals opened and held against the pack. */
export interface OpenedDesk {
  proposals: OpenedProposal[];
  strangers: number;
  rows: Row[];
  /** Those that are about what stands in the rows now; and the slots of those that are about something else. */
  decisions: ReadonlyMap<string, Decision>;
  lapsed: ReadonlySet<string>;
  /** By the rows' slots: what a decision about one is about. */
  questions: ReadonlyMap<string, string>;
  merged: Merged;
}

export async function openDesk(pack: Pack, desk: KeptDesk): Promise<OpenedDesk> {
  const opened = await Promise.all(desk.proposals.map(openProposal));
  const proposals = opened.flatMap((one) => (one?.pack === pack.about.id ? one : []));
  const rows = mergeRows(pack, proposals);
  const hashed = rows.map(async (row) => [row.slot, await contentHash(questionOf(row))] as const);
  const questions = new Map(await Promise.all(hashed));
  const holds = ([slot, , saw]: KeptDesk['decisions'][number]) => questions.get(slot) === saw;
  // What is kept as decisions was made by the workbench alone.
  const decisions = new Map(desk.decisions.filter(holds).map(([slot, decision]) => [slot, decision as Decision]));
  const lapsed = new Set(desk.decisions.filter((one) => !holds(one)).map(([slot]) => slot));
  const merged = mergeProposals(pack, rows, decisions, proposals.length);
  return { proposals, strangers: opened.length - proposals.length, rows, decisions, lapsed, questions, merged };
}

export function deskTold(
  pack: Pack,
  { proposals, strangers, rows, decisions, lapsed, questions, merged }: OpenedDesk,
  { key, next }: Pick<DeskTold, 'key' | 'next'>,
  published: KeptDesk['published'],
): DeskTold {
  const names = entryNames(pack);
  const tell = (row: Row): RowTold => {
    const offered = row.offers[0]?.change;
    const value = offered && offered.do === 'add' ? offered.value : isObject(row.here) ? row.here : {};
    const isField = row.field !== null;
    return {
      ...{ slot: row.slot, state: row.state, part: row.part, name: names(row.part, row.entry, value as JsonObject) },
      field: row.field && fieldLabel(pack, row.field),
      here: row.here === undefined ? null : valueTold(row.here),
      offers: row.offers.map(({ change, from }) => ({
        words: offerWords(change),
        from: from.map((at) => proposals[at]?.author.name ?? ''),
      })),
      typed: isField && isTypable(nowOf(offered)) ? typedForm(nowOf(offered)) : null,
      offered: nowOf(offered) ?? null,
      decision: decisions.get(row.slot) ?? null,
      ...{ lapsed: lapsed.has(row.slot), saw: questions.get(row.slot) ?? '' },
    };
  };
  return {
    next,
    proposals: proposals.map(({ author, note, base }) => ({ author: author.name, note, base: base.edition })),
    ...{ strangers, rows: rows.map(tell), undecided: merged.undecided.length, issues: merged.issues, key },
    published: published && { edition: published.edition, files: [...published.files] },
  };
}

function nowOf(change: Change | undefined): Json | undefined {
  return change?.do === 'change' ? change.now : undefined;
}

function offerWords(change: Change): string {
  if (change.do === 'change') return change.now === undefined ? texts.nothing : valueTold(change.now);
  return change.do === 'add' ? texts.entryComes : change.do === 'remove' ? texts.entryGoes : texts.kinds.moved;
}
