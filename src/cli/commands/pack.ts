import { packJsonSchema } from '../../pack/json-schema';
import { cli } from '../../text/catalogue/cli';
import { packCliTexts as texts } from '../../text/catalogue/pack-cli';
import { readArguments } from '../arguments';
import { BadInput } from '../bad-input';
import { writeOutput } from '../output-file';
import { checkCommand } from './pack-check';
import { diffCommand } from './pack-diff';
import { mergeCommand } from './pack-merge';
import { PACK_OPTIONS, type PackValues } from './pack-options';
import { proposeCommand } from './pack-propose';
import { publishCommand } from './pack-publish';
import { keyCommand, sealCommand } from './pack-seal';
import { verifyCommand } from './pack-verify';

type Command = (files: string[], values: PackValues) => string | Promise<string>;

const COMMANDS: ReadonlyMap<string, Command> = new Map<string, Command>([
  ['check', checkCommand],
  ['schema', schemaCommand],
  ['key', keyCommand],
  ['seal', sealCommand],
  ['verify', verifyCommand],
  ['diff', diffCommand],
  ['propose', proposeCommand],
  ['merge', mergeCommand],
  ['publish', publishCommand],
]);

/** `npm run -s pack`: for keepers and clubs that hold their packs as files. */
export async function packCommand(argv: string[]): Promise<string> {
  const { usage } = texts;
  const { values, positionals } = readArguments(argv, PACK_OPTIONS, usage);
  if (values.help) return `${usage}\n`;
  const [name, ...files] = positionals;
  if (name === undefined) throw new BadInput(cli.bad.noInput(usage));
  const command = COMMANDS.get(name);
  if (!command) throw new BadInput(cli.bad.packCommand(name, usage));
  return command(files, values);
}

/** The JSON Schema of packs; made anew from the program, so that writing over an older one loses nothing. */
function schemaCommand(_files: string[], { out }: PackValues): string {
  const json = `${JSON.stringify(packJsonSchema(), null, 2)}\n`;
  return out === undefined ? json : `${texts.wrote(out, writeOutput(out, json, true))}\n`;
}
