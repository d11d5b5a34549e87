import { packCliTexts as texts } from '../../text/catalogue/pack-cli';
import { BadInput } from '../bad-input';

/** The options of all of the pack commands; each takes those that it knows. */
export const PACK_OPTIONS = {
  out: { type: 'string' },
  force: { type: 'boolean' },
  json: { type: 'boolean' },
  key: { type: 'string' },
  passphrase: { type: 'string' },
  over: { type: 'string' },
  expires: { type: 'string' },
  next: { type: 'string' },
  'old-key': { type: 'string' },
  'old-passphrase': { type: 'string' },
  after: { type: 'string' },
  on: { type: 'string' },
  name: { type: 'string' },
  note: { type: 'string' },
  text: { type: 'boolean' },
  rows: { type: 'boolean' },
  decisions: { type: 'string' },
  answers: { type: 'string' },
  folder: { type: 'string' },
  help: { type: 'boolean', short: 'h' },
} as const;

type Option = keyof typeof PACK_OPTIONS;
export type PackValues = {
  [K in Option]?: ((typeof PACK_OPTIONS)[K]['type'] extends 'boolean' ? boolean : string) | undefined;
};
type StringOption = { [K in Option]: (typeof PACK_OPTIONS)[K]['type'] extends 'string' ? K : never }[Option];

/** The value of an option that this command can't do without. @throws BadInput */
export function needed(values: PackValues, option: StringOption): string {
  const value = values[option];
  if (value === undefined) throw new BadInput(texts.needs(`--${option}`, texts.usage));
  return value;
}

/** The one file of a command. @throws BadInput */
export function one(command: string, files: readonly string[]): string {
  const [file] = files;
  if (file === undefined || files.length > 1)
    throw new BadInput(texts.countOfFiles(command, texts.wanted.one, files.length, texts.usage));
  return file;
}

/** The two files of a command. @throws BadInput */
export function two(command: string, files: readonly string[]): [string, string] {
  const [first, second] = files;
  if (first === undefined || second === undefined || files.length > 2)
    throw new BadInput(texts.countOfFiles(command, texts.wanted.two, files.length, texts.usage));
  return [first, second];
}
