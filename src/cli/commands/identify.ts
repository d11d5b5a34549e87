import type { Audit } from '../../audit/types';
import { audit, compile } from '../../engine';
import { listingByHand } from '../../listing/by-hand';
import type { Knowledge } from '../../pack/knowledge';
import { cli } from '../../text/catalogue/cli';
import { identifyCliTexts as texts } from '../../text/catalogue/identify-cli';
import { dayOf, readArguments } from '../arguments';
import { today } from '../auditor';
import { BadInput } from '../bad-input';
import { hanging, pageWidth } from '../layout';
import { followsText, likelyText, settleText } from '../likely-text';
import { loadPacks } from '../packs';
import { printable, printableJson } from '../printable';
import { NONE_SEALED, type SealedPacks, sealsOf } from '../sealed-packs';
import { seenOf } from '../seen';

/** `npm run -s identify`: a machine on the table, by its number and what was seen of it. */
export function identifyCommand(argv: string[], sealed: SealedPacks = NONE_SEALED): string {
  const { usage } = texts;
  const { values, positionals } = readArguments(
    argv,
    {
      what: { type: 'string' },
      serial: { type: 'string' },
      seen: { type: 'string', multiple: true },
      text: { type: 'string' },
      pack: { type: 'string', multiple: true },
      'as-of': { type: 'string' },
      json: { type: 'boolean' },
      help: { type: 'boolean', short: 'h' },
    },
    usage,
  );
  if (values.help) return `${usage}\n`;
  if (positionals[0] !== undefined) throw new BadInput(texts.noArguments(positionals[0]));
  const asOf = values['as-of'] === undefined ? today() : dayOf(values['as-of']);
  const knowledge = compile(loadPacks(values.pack ?? [], sealed), sealsOf(sealed));
  const answers = seenOf(values.seen ?? [], knowledge);
  const what = values.what ?? wordsFor(knowledge)[0] ?? '';
  const answer = audit(listingByHand({ what, serial: values.serial, text: values.text }), knowledge, { asOf, answers });
  if (answer.kind !== 'item' || answer.packs.length === 0)
    throw new BadInput(texts.whatNotCovered(what, wordsFor(knowledge).join(', ')));
  return values.json
    ? `${printableJson(answer, 2)}\n`
    : identifyText(answer, knowledge, pageWidth(process.stdout.columns));
}

/** For each pack that stands by itself the first of the words by which it knows its thing. */
function wordsFor({ packs }: Knowledge): string[] {
  const words = packs.flatMap(({ about }) => {
    const [first] = about.covers.words;
    return first === undefined ? [] : [typeof first === 'string' ? first : first.text];
  });
  return [...new Set(words)];
}

function identifyText(answer: Audit, knowledge: Knowledge, width: number): string {
  const blocks = [
    serialText(answer, knowledge, width),
    likelyText(answer, width),
    followsText(answer.likely[0], width),
    settleText(answer, width, true),
  ];
  return `${blocks.flatMap((block) => (block.length > 0 ? [block.join('\n')] : [])).join('\n\n')}\n`;
}

function serialText({ serial }: Audit, { models }: Knowledge, width: number): string[] {
  if (serial.asWritten === null) return [];
  const labels = (refs: readonly string[]): string => refs.map((ref) => models.get(ref)?.label ?? ref).join(', ');
  return [
    ...hanging(texts.serial, printable(`${serial.asWritten}: ${cli.audit.verdicts[serial.verdict]}`), 8, width),
    ...serial.runs.flatMap(({ first, last, models: refs, year }) =>
      hanging('', printable(texts.run(first, last, labels(refs), year === null ? null : String(year))), 8, width),
    ),
  ];
}
