import { type ParseArgsConfig, parseArgs } from 'node:util';
import { cli as texts } from '../text/catalogue/cli';
import { BadInput } from './bad-input';

type Options = NonNullable<ParseArgsConfig['options']>;

/**
 * Reads a command's arguments.
 * @throws BadInput on an option that it doesn't know, or one without its value.
 */
export function readArguments<O extends Options>(argv: string[], options: O, usage: string) {
  try {
    return parseArgs({ args: argv, options, allowPositionals: true, strict: true });
  } catch (error) {
    const { code, message } = error as { code?: string; message: string };
    const option = /'(-[^\s',]*)/.exec(message)?.[1] ?? '';
    if (code === 'ERR_PARSE_ARGS_UNKNOWN_OPTION') throw new BadInput(texts.bad.unknownOption(option, usage));
    if (code !== 'ERR_PARSE_ARGS_INVALID_OPTION_VALUE') throw error;
    const long = /--[\w-]+/.exec(message)?.[0] ?? option;
    if (/does not take an argument/.test(message)) throw new BadInput(texts.bad.optionTakesNoValue(long, usage));
    throw new BadInput(texts.bad.optionNeedsValue(long, usage));
  }
}

/** A day of the calendar, "2026-03-14", given to an option. @throws BadInput. */
export function dayOf(text: string, option = '--as-of'): string {
  const time = /^\d{4}-\d{2}-\d{2}$/.test(text) ? Date.parse(`${text}T00:00:00Z`) : Number.NaN;
  if (Number.isNaN(time) || new Date(time).toISOString().slice(0, 10) !== text) {
    throw new BadInput(texts.bad.date(option, text));
  }
  return text;
}

/** An address of the web. @throws BadInput. */
export function webAddress(text: string): string {
  const url = URL.canParse(text) ? new URL(text) : null;
  if (!url || !/^https?:$/.test(url.protocol)) throw new BadInput(texts.bad.url(text));
  return url.href;
}
