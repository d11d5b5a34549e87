import { cli as texts } from '../../text/catalogue/cli';
import { dayOf, readArguments, webAddress } from '../arguments';
import { type Auditor, auditorOf, today } from '../auditor';
import { BadInput } from '../bad-input';
import { loadDrafts } from '../drafts';
import { readPageFile } from '../page-file';
import { printableJson } from '../printable';

/** `npm run -s audit`: audits a stored page, or one draft or many. */
export function auditCommand(argv: string[]): string {
  const usage = texts.usage.audit;
  const { values, positionals } = readArguments(
    argv,
    {
      draft: { type: 'string' },
      pack: { type: 'string', multiple: true },
      'as-of': { type: 'string' },
      url: { type: 'string' },
      json: { type: 'boolean' },
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

  const json = values.json ?? false;
  const auditor = auditorOf(values.pack ?? [], asOf);
  if (page !== undefined) return onePage(auditor, page, url, json);
  return drafts(auditor, values.draft ?? '', json);
}

function onePage(auditor: Auditor, page: string, url: string | undefined, json: boolean): string {
  const answer = auditor.audit(readPageFile(page, url));
  return json ? `${printableJson(answer, 2)}\n` : auditor.text(answer);
}

/** One draft answers as a page does; a list of drafts one line of JSON each, or one block of text each, with its id. */
function drafts(auditor: Auditor, file: string, json: boolean): string {
  const { drafts, list } = loadDrafts(file);
  const answers = drafts.map(({ id, listing }) => ({ id, answer: auditor.audit(listing) }));
  if (!list) {
    return answers.map(({ answer }) => (json ? `${printableJson(answer, 2)}\n` : auditor.text(answer))).join('');
  }
  if (json) return answers.map(({ id, answer }) => `${printableJson({ id, ...answer })}\n`).join('');
  return answers
    .map(({ id, answer }, i) => `${texts.audit.draft(id ?? `${i + 1}`)}\n${auditor.text(answer)}`)
    .join('\n');
}
