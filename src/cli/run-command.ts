import { cli as texts } from '../text/catalogue/cli';
import { BadInput } from './bad-input';
import { printable } from './printable';

/**
 * Runs a command: what it answers goes to standard output, and the exit code is 0. Bad input is one line on standard
 * error and exit code 2; a fault of our own is one line and exit code 1. There is never a stack trace.
 */
export async function runCommand(command: (argv: string[]) => string | Promise<string>): Promise<void> {
  // A reader that closes early ("| head") is no fault.
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code === 'EPIPE') process.exit(0);
    throw error;
  });
  try {
    process.stdout.write(await command(process.argv.slice(2)));
  } catch (error) {
    const bad = error instanceof BadInput;
    const message = error instanceof Error ? error.message : String(error);
    process.stderr.write(`${oneLine(bad ? message : texts.internal(message))}\n`);
    process.exitCode = bad ? 2 : 1;
  }
}

function oneLine(message: string): string {
  return printable(message).replace(/\s+/g, ' ').trim();
}
