import { cli as texts } from '../../text/catalogue/cli';
import { dayOf, readArguments, webAddress } from '../arguments';
import { BadInput } from '../bad-input';
import { pageWidth } from '../layout';
import { listingText } from '../listing-text';
import { readPageFile } from '../page-file';
import { printableJson } from '../printable';

/** `npm run -s read`: what a stored page says, as a listing. */
export function readCommand(argv: string[]): string {
  const usage = texts.usage.read;
  const { values, positionals } = readArguments(
    argv,
    {
      url: { type: 'string' },
      'as-of': { type: 'string' },
      json: { type: 'boolean' },
      help: { type: 'boolean', short: 'h' },
    },
    usage,
  );
  if (values.help) return `${usage}\n`;
  const [page, ...more] = positionals;
  if (!page) throw new BadInput(texts.bad.noInput(usage));
  if (more.length > 0) throw new BadInput(texts.bad.tooMany(positionals.length));
  const url = values.url === undefined ? undefined : webAddress(values.url);
  const listing = readPageFile(page, url, values['as-of'] === undefined ? null : dayOf(values['as-of']));
  return values.json ? `${printableJson(listing, 2)}\n` : listingText(listing, pageWidth(process.stdout.columns));
}
