import type { Explanation } from '../../audit/explain/types';
import type { Audit } from '../../audit/types';
import type { Listing } from '../../listing/types';
import { cli as texts } from '../../text/catalogue/cli';
import { dayOf, readArguments, webAddress } from '../arguments';
import { type Auditor, auditorOf, today } from '../auditor';
import { BadInput } from '../bad-input';
import { loadDrafts } from '../drafts';
import { readPageFile } from '../page-file';
import { printableJson } from '../printable';
import { NONE_SEALED, type SealedPacks } from '../sealed-packs';

/** `npm run -s audit`: audits a stored page, or one draft or many. */
export function auditCommand(argv: string[], sealed: SealedPacks = NONE_SEALED): string {
  const usage = texts.usage.audit;
  const { values, positionals } = readArguments(
    argv,
    {
      draft: { type: 'string' },
      pack: { type: 'string', multiple: true },
      'as-of': { type: 'string' },
      url: { type: 'string' },
      json: { type: 'boolean' },
      explain: { type: 'boolean' },
      help: { type: 'boolean', short: 'h' },
    },
    usage,
  );
  if (values.help) return `${usage}\n`;
  const [page, ...more] = positionals;
  if (page === undefined && values.draft === undefined) throw new BadInput(texts.bad.noInput(usage));
  if (page !== undefined && values.draft !== undefined) throw new BadInput(texts.bad.both);
  if (more.length > 0) throw new BadInput(texts.bad.tooMany(positionals.length));
  if (values.draft !== undefined && values.url !== undefined) throw new BadInput(texts.bad.draftTakesNoUrl);
  const asOf = values['as-of'] === undefined ? today() : dayOf(values['as-of']);
  const url = values.url === undefined ? undefined : webAddress(values.url);

  const auditor = auditorOf(values.pack ?? [], asOf, sealed);
  const answering: Answering = { auditor, json: values.json ?? false, why: values.explain ?? false };
  // When a stored page was seen nobody knows, unless it is said.
  if (page !== undefined) return one(answering, readPageFile(page, url, values['as-of'] === undefined ? null : asOf));
  return drafts(answering, values.draft ?? '');
}

/** How answers are given: as text or as JSON, and with or without the reasons. */
interface Answering {
  auditor: Auditor;
  json: boolean;
  why: boolean;
}

function one(how: Answering, listing: Listing): string {
  return how.json ? `${printableJson(asJson(how, listing), 2)}\n` : asText(how, listing);
}

function asJson({ auditor, why }: Answering, listing: Listing): Audit & { explain?: Explanation['phrases'] } {
  return { ...auditor.audit(listing), ...(why ? { explain: auditor.explain(listing).phrases } : {}) };
}

function asText({ auditor, why }: Answering, listing: Listing): string {
  const text = auditor.text(auditor.audit(listing));
  return why ? `${text}\n${auditor.explainText(auditor.explain(listing))}` : text;
}

/** One draft answers as a page does; a list of drafts one line of JSON each, or one block of text each, with its id. */
function drafts(how: Answering, file: string): string {
  const { drafts, list } = loadDrafts(file);
  if (!list) return drafts.map(({ listing }) => one(how, listing)).join('');
  if (how.json) return drafts.map(({ id, listing }) => `${printableJson({ id, ...asJson(how, listing) })}\n`).join('');
  return drafts
    .map(({ id, listing }, i) => `${texts.audit.draft(id ?? `${i + 1}`)}\n${asText(how, listing)}`)
    .join('\n');
}
