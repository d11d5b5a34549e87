import { spawnSync } from 'node:child_process';
import { createRequire } from 'node:module';
import { ROOT } from './root';
import { failedOne, passedOne, sum, type Tally } from './tally';

/** What the linter of the Firefox add-ons' registry says of one place in a build. */
export interface Remark {
  _type: 'error' | 'warning' | 'notice';
  code: string;
  message: string;
  file?: string | undefined;
}

/** Warnings that stay, each with the reason why it may. */
export const EXPLAINED: readonly { code: string; file: RegExp; why: string }[] = [
  {
    code: 'UNSAFE_VAR_ASSIGNMENT',
    file: /^chunks\/.*\.js$/,
    why: 'the renderer (preact) has code for dangerouslySetInnerHTML. No component uses it, and our pages demand trusted types, so that the browser would refuse such an assignment.',
  },
];

/**
 * The checks that a Firefox add-on must pass to be published, by its publisher's own linter: no error, and no warning
 * without a reason. It reads the build's files and asks no network.
 */
export function checkAddOn(build: string): Tally {
  const start = createRequire(import.meta.url).resolve('addons-linter/bin/addons-linter');
  const run = spawnSync(process.execPath, [start, build, '--output', 'json'], {
    cwd: ROOT,
    stdio: ['ignore', 'pipe', 'inherit'],
    encoding: 'utf8',
    maxBuffer: 50_000_000,
    timeout: 3 * 60_000,
  });
  try {
    const { errors, warnings, notices } = JSON.parse(run.stdout) as Record<string, Remark[]>;
    return judgeRemarks([...(errors ?? []), ...(warnings ?? []), ...(notices ?? [])]);
  } catch {
    return failedOne(
      `failed: the add-on's linter answered nothing that can be read${run.error ? `: ${run.error}` : ''}`,
    );
  }
}

/** A build without remarks passes; an explained one passes by itself and says why; any other fails. */
export function judgeRemarks(remarks: readonly Remark[], say: (line: string) => void = console.log): Tally {
  const tallies = remarks.map(({ _type, code, message, file = '' }) => {
    const reason = EXPLAINED.find((one) => one.code === code && one.file.test(file));
    if (_type === 'error' || !reason) return failedOne(`failed: add-on linter: ${_type} ${code}, ${file}: ${message}`);
    say(`${code} in ${file}: ${reason.why}`);
    return passedOne();
  });
  return sum([passedOne(), ...tallies]);
}
