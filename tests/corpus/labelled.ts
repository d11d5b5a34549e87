import { existsSync, readdirSync, readFileSync } from 'node:fs';
import type { Audit, Finding } from '../../src/audit/types';
import { audit, compile, parsePack } from '../../src/engine';
import { readDraft } from '../../src/listing/draft';
import type { Draft } from '../../src/listing/types';
import type { Knowledge } from '../../src/pack/knowledge';

/** A labelled advert: what a knowledgeable, fair person says of it. */
export interface Labelled {
  id: string;
  honest: boolean;
  note: string;
  draft: Draft;
  gold: {
    kind: string;
    claimedModel: string | null;
    claims?: { attribute: string; value: unknown; stance: string; subject: string; quote: string }[];
    disproved: { check: string; attribute: string | null; quote: string }[];
    serialVerdict: string;
    priceStanding: string;
  };
}

export const AS_OF = '2026-11-25';

const at = (path: string): URL => new URL(`../../${path}`, import.meta.url);

export type Half = 'tuned' | 'measured';

/** A labelled set: a half, and the club's pack that its labels were held against, beside the trade's. */
export type SetName = `${Half}/${string}`;

/** Every set of a half: a folder is named after its pack. */
export function setsOf(half: Half): SetName[] {
  return readdirSync(at(`fixtures/drafts/corpus/${half}/`))
    .sort()
    .map((pack): SetName => `${half}/${pack}`);
}

/** The packs of the demo, and those that are there for the adverts alone. */
const SHELVES = ['fixtures/packs', 'fixtures/drafts/packs'];

export function knowledgeFor(set: SetName): Knowledge {
  const id = set.slice(set.indexOf('/') + 1);
  const club = SHELVES.map((shelf) => `${shelf}/${id}.json`).find((path) => existsSync(at(path)));
  if (!club) throw new Error(`no pack ${id}`);
  const packs = ['src/pack/shipped/trade.json', club].map((path) => {
    const { pack, issues } = parsePack(readFileSync(at(path), 'utf8'));
    if (!pack) throw new Error(`${path}: ${JSON.stringify(issues?.[0])}`);
    return pack;
  });
  return compile(packs);
}

/** What the demo's adverts are held against. */
export function demoKnowledge(): Knowledge {
  return knowledgeFor('tuned/grindlewade-circle');
}

export function labelled(set: SetName): Labelled[] {
  const folder = at(`fixtures/drafts/corpus/${set}/`);
  return readdirSync(folder)
    .filter((file) => file.endsWith('.json'))
    .sort()
    .flatMap((file) => JSON.parse(readFileSync(new URL(file, folder), 'utf8')) as Labelled[]);
}

export function auditLabelled(advert: Labelled, knowledge: Knowledge): Audit {
  return audit(readDraft(advert.draft), knowledge, { asOf: AS_OF });
}

export function disproved(result: Audit): Finding[] {
  return result.findings.filter((finding) => finding.standing === 'disproved');
}

/** Is this finding the one that the label means? The same check, the same attribute where the label names one, words in common. */
export function matches(finding: Finding, wanted: { check: string; attribute: string | null; quote: string }): boolean {
  if (!sameCheck(finding, wanted)) return false;
  if (wanted.attribute !== null && finding.attribute !== null && finding.attribute !== wanted.attribute) return false;
  const fold = (text: string): string => text.toLowerCase().replace(/\s+/g, ' ').trim();
  return finding.said.some(
    ({ quote }) => fold(quote).includes(fold(wanted.quote)) || fold(wanted.quote).includes(fold(quote)),
  );
}

/** What a whole family can't be, or a part doesn't fit, was labelled as a fact of the model: the same words are meant. */
function sameCheck(finding: Finding, wanted: { check: string; attribute: string | null }): boolean {
  if (finding.check === wanted.check) return true;
  // Of a thing without a model's name it is the family's fact that is meant, or that of all that it may be.
  if (finding.check === 'claim-fact' && wanted.check === 'family') return true;
  // A measure's words ("long arm") are a feature, or a limit.
  if (finding.check === 'claim-fact' && wanted.check === 'weight') return finding.attribute === wanted.attribute;
  const kin: Record<string, string> = { family: 'claim-fact', fits: 'claim-fact', 'age-words': 'serial-year' };
  // A year can be wrong of the number and of all of its model: either check says so.
  if (finding.check === 'serial-year' && wanted.check === 'age-words') return true;
  return kin[finding.check] === wanted.check && (wanted.attribute === null || wanted.attribute === finding.attribute);
}
