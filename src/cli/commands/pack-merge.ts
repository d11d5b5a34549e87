import { join } from 'node:path';
import * as z from 'zod/mini';
import type { Pack } from '../../pack/schema/index';
import { writeAnswer } from '../../sharing/propose/answer';
import { diffPacks } from '../../sharing/propose/diff-packs';
import type { Json } from '../../sharing/propose/json';
import {
  acceptWhatFits,
  type Decision,
  mergeProposals,
  mergeRows,
  type Row,
} from '../../sharing/propose/merge-proposals';
import { type OpenedProposal, openProposal, type Proposal } from '../../sharing/propose/proposal';
import { packCliTexts as texts } from '../../text/catalogue/pack-cli';
import { BadInput } from '../bad-input';
import { readText } from '../input-file';
import { readKeys } from '../key-file';
import { folderFor, writeOutput } from '../output-file';
import { printable, printableJson } from '../printable';
import { readAnyPack } from '../sealed-file';
import { needed, type PackValues } from './pack-options';

type Offered = Pick<Proposal, 'changes' | 'author' | 'note'>;

/** `pack merge`: three packs of version control, or a pack and the proposals of its members. */
export async function mergeCommand(files: string[], values: PackValues): Promise<string> {
  const { pack, offered, proposals } = await gather(files);
  const rows = mergeRows(pack, offered);
  if (values.rows) return `${printableJson(rows, 2)}\n`;
  const out = needed(values, 'out');
  const decisions = acceptWhatFits(rows);
  if (values.decisions !== undefined)
    for (const [slot, one] of readDecisions(values.decisions, rows)) decisions.set(slot, one);
  const merged = mergeProposals(pack, rows, decisions, offered.length);
  if (merged.undecided.length > 0) {
    const failed = new Set(merged.misfits.map(({ change }) => `${change.part}\n${change.entry}`));
    const lines = merged.undecided.map((row) =>
      decisions.has(row.slot) && failed.has(`${row.part}\n${row.entry}`)
        ? texts.cannot(placeOf(row))
        : rowText(row, offered),
    );
    process.stdout.write(printable(`${lines.join('\n')}\n`));
    throw new BadInput(texts.undecided(merged.undecided.length));
  }
  const [issue] = merged.issues;
  if (issue) throw new BadInput(texts.mergedIssues(merged.issues.length, issue.path, issue.what, issue.expected));
  const taken = rows.filter(({ slot, state }) => state !== 'already' && decisions.get(slot)?.do !== 'decline').length;
  const lines = [texts.merged(out, taken, writeOutput(out, `${JSON.stringify(merged.pack, null, 2)}\n`, values.force))];
  if (values.answers !== undefined)
    lines.push(...(await writeAnswers(values.answers, pack, proposals, merged.answers, values)));
  return `${lines.join('\n')}\n`;
}

async function gather(files: string[]): Promise<{ pack: Pack; offered: Offered[]; proposals: OpenedProposal[] }> {
  const [first, ...others] = files;
  const opened = await Promise.all(
    others.map(async (path) => ({ path, proposal: await openProposal(readText(path)) })),
  );
  if (first === undefined || others.length === 0) throw wrongCount(files);
  if (others.length === 2 && opened.every(({ proposal }) => proposal === null)) return threeWay(files);
  const pack = await readAnyPack(first);
  const proposals = opened.map(({ path, proposal }) => {
    if (!proposal) throw new BadInput(texts.notAProposal(path));
    if (proposal.pack !== pack.about.id) throw new BadInput(texts.proposalForOther(path, proposal.pack, pack.about.id));
    return proposal;
  });
  return { pack, offered: proposals, proposals };
}

/** What THEIRS changed since BASE, as a proposal to OURS. Of two edition numbers the higher one is the next. */
async function threeWay(files: string[]): Promise<{ pack: Pack; offered: Offered[]; proposals: [] }> {
  const [base, ours, theirs] = (await Promise.all(files.map(readAnyPack))) as [Pack, Pack, Pack];
  const edition = Math.max(ours.about.edition, theirs.about.edition);
  const sameEdition = (pack: Pack): Pack => ({ ...pack, about: { ...pack.about, edition } });
  const changes = diffPacks(sameEdition(base), sameEdition(theirs));
  return { pack: sameEdition(ours), offered: [{ changes, author: { name: texts.theirs }, note: '' }], proposals: [] };
}

function wrongCount(files: string[]): BadInput {
  return new BadInput(texts.countOfFiles('merge', texts.wanted.pack, files.length, texts.usage));
}

const Decisions = z.record(
  z.string(),
  z.discriminatedUnion('do', [
    z.strictObject({ do: z.literal('accept'), offer: z.int(), reason: z.optional(z.string()) }),
    z.strictObject({
      do: z.literal('edit'),
      now: z.optional(z.custom<Json>((value) => value !== undefined)),
      reason: z.string(),
    }),
    z.strictObject({ do: z.literal('decline'), reason: z.string() }),
  ]),
);

function readDecisions(path: string, rows: readonly Row[]): [string, Decision][] {
  let read: z.infer<typeof Decisions> | undefined;
  try {
    read = Decisions.safeParse(JSON.parse(readText(path))).data;
  } catch (error) {
    if (error instanceof BadInput) throw error;
  }
  if (!read) throw new BadInput(texts.badDecisions(path));
  const bySlot = new Map(rows.map((row) => [row.slot, row]));
  for (const [slot, decision] of Object.entries(read)) {
    const row = bySlot.get(slot);
    if (!row) throw new BadInput(texts.unknownSlot(path, slot));
    if (decision.do === 'accept' && !row.offers[decision.offer])
      throw new BadInput(texts.unknownOffer(path, slot, decision.offer));
  }
  return Object.entries(read) as [string, Decision][];
}

function placeOf({ part, entry, field }: Row): string {
  return [part, entry, ...(field ?? [])].filter((name) => name !== '').join(' ');
}

/** What stands at a place, and what each would have there, side by side. */
function rowText(row: Row, offered: readonly Offered[]): string {
  const said = (value: Json | undefined): string => (value === undefined ? texts.nothing : JSON.stringify(value));
  const offers = row.offers.map(({ change, from }) => {
    const who = [...new Set(from.map((i) => offered[i]?.author.name ?? ''))].join(', ');
    return texts.offer(who, change.do === 'change' ? said(change.now) : texts.whole[change.do]);
  });
  return texts.conflict(placeOf(row), said(row.here), offers.join('; '));
}

async function writeAnswers(
  folder: string,
  pack: Pack,
  proposals: readonly OpenedProposal[],
  answers: ReturnType<typeof mergeProposals>['answers'],
  values: PackValues,
): Promise<string[]> {
  const keys = await readKeys(needed(values, 'key'), needed(values, 'passphrase'));
  const lines: string[] = [];
  for (const [i, { hash }] of proposals.entries()) {
    const path = join(folderFor(folder), `${hash.slice(0, 16)}.answer`);
    const answer = { pack: pack.about.id, proposal: hash, edition: pack.about.edition + 1, changes: answers[i] ?? [] };
    lines.push(texts.wrote(path, writeOutput(path, await writeAnswer(answer, keys), values.force)));
  }
  return lines;
}
