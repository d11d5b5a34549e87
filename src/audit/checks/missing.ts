import type { LocalText } from '../../pack/schema/parts';
import { askTexts } from '../../text/catalogue/asks';
import { findingTexts } from '../../text/catalogue/findings';
import type { AuditCase } from '../case';
import { type OpenName, photographsSpokenOf, photographsWanted } from '../photographs';
import type { Finding, Known } from '../types';
import { askOf, say } from '../words';

const texts = findingTexts.missing;

/** What an advert of this kind should show and doesn't, the most telling first. The audit keeps three at most. */
export function missing(auditCase: AuditCase): Finding[] {
  const { listing, reading, knowledge } = auditCase;
  const open = openNames(auditCase);
  const ask = (text: LocalText): string => askOf(text, auditCase);
  // What the advert has said of a photograph itself is not asked for once more.
  const spokenOf = photographsSpokenOf(auditCase);
  for (const entry of spokenOf) for (const name of entry.names ?? []) open.delete(name);
  const out: Finding[] = [];
  // A draft has no photographs to show; a page that shows none is worth knowing.
  if (listing.photos.length === 0 && listing.fields.photo?.source !== 'draft' && listing.url !== null)
    out.push(finding('photos', texts.photos, ask(askTexts.photos)));
  // Where tables stand ready, a number tells more than any photograph.
  const hasTables = knowledge.serials.schemes.some(({ pack }) => reading.covering.has(pack));
  if (hasTables && open.delete('serial')) out.push(finding('serial', texts.serial, ask(askTexts.serial)));
  for (const { pack, entry } of photographsWanted(auditCase, open, spokenOf)) {
    for (const name of entry.names ?? []) open.delete(name);
    const source = pack.citations.get(entry.source ?? '') ?? null;
    const text = texts.photograph(say(entry.label), say(entry.tells));
    out.push(
      finding(`${pack.id}/${entry.id}`, text, ask(entry.ask), [{ pack: pack.id, entry: entry.id, text, source }]),
    );
  }
  if (open.has('serial')) out.push(finding('serial', texts.serial, ask(askTexts.serial)));
  if (open.has('model')) out.push(finding('model', texts.model, ask(askTexts.model)));
  return out;
}

function openNames({ reading, serial }: AuditCase): Set<OpenName> {
  const open = new Set<OpenName>();
  if (!serial) open.add('serial');
  if (reading.claimedModels.every((model) => model.isType)) open.add('model');
  return open;
}

function finding(what: string, text: string, ask: string, known: Known[] = []): Finding {
  const id = `missing:${what}`;
  return { id, check: 'missing', standing: 'unproved', attribute: null, said: [], known, text, ask };
}
