import { writeFileSync } from 'node:fs';
import { parsePack } from '../../engine';
import { packJsonSchema } from '../../pack/json-schema';
import { cli as texts } from '../../text/catalogue/cli';
import { readArguments } from '../arguments';
import { BadInput } from '../bad-input';
import { readText } from '../input-file';
import { printable } from '../printable';

/** `npm run -s pack`: checks pack files, or writes the JSON Schema of packs. */
export function packCommand(argv: string[]): string {
  const usage = texts.usage.pack;
  const { values, positionals } = readArguments(
    argv,
    { out: { type: 'string' }, help: { type: 'boolean', short: 'h' } },
    usage,
  );
  if (values.help) return `${usage}\n`;
  const [command, ...files] = positionals;
  if (command === 'schema') return schema(values.out);
  if (command === undefined || (command === 'check' && files.length === 0))
    throw new BadInput(texts.bad.noInput(usage));
  if (command !== 'check') throw new BadInput(texts.bad.packCommand(command, usage));
  return check(files);
}

function schema(out: string | undefined): string {
  const json = `${JSON.stringify(packJsonSchema(), null, 2)}\n`;
  if (out === undefined) return json;
  try {
    writeFileSync(out, json);
  } catch (error) {
    throw new BadInput(texts.bad.unwritable(out, (error as NodeJS.ErrnoException).code ?? String(error)));
  }
  return `${texts.pack.written(out)}\n`;
}

/** Every issue of every file, one line each; @throws BadInput at the end where a file has any. */
function check(files: string[]): string {
  const lines: string[] = [];
  let bad = 0;
  for (const file of files) {
    const { pack, issues } = parsePack(readText(file));
    if (pack) {
      const models = (pack.models?.length ?? 0) + (pack.types?.length ?? 0);
      const runs = pack.serials?.runs.first.length ?? 0;
      lines.push(texts.pack.good(file, pack.about.id, pack.about.edition, models, runs));
    } else {
      bad += 1;
      for (const { path, what, expected } of issues) lines.push(texts.pack.issue(file, path, what, expected));
    }
  }
  const text = lines.map((line) => `${printable(line)}\n`).join('');
  if (bad === 0) return text;
  process.stdout.write(text);
  throw new BadInput(texts.pack.badFiles(bad, files.length));
}
