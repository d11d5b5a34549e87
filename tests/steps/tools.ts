import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT } from './root';
import { failedOne, passedOne, type Tally } from './tally';
import { countReport } from './vitest-report';

/** The tools' own files, started by this Node: the same on every platform, without a shell. */
const TOOLS = {
  wxt: 'node_modules/wxt/bin/wxt.mjs',
  tsc: 'node_modules/typescript/bin/tsc',
  biome: 'node_modules/@biomejs/biome/bin/biome',
  vitest: 'node_modules/vitest/vitest.mjs',
};

/**
 * Runs a tool without a terminal and without input; what it prints is shown as it comes.
 * @param most minutes after which it is ended: a loop without an end can't be ended from inside.
 */
export function tool(name: keyof typeof TOOLS, args: string[], most = 3, env: Record<string, string> = {}): boolean {
  const run = spawnSync(process.execPath, [join(ROOT, TOOLS[name]), ...args], {
    cwd: ROOT,
    stdio: ['ignore', 'inherit', 'inherit'],
    env: { ...process.env, WXT_TELEMETRY: '0', ...env },
    timeout: most * 60_000,
    killSignal: 'SIGKILL',
  });
  if (run.error) console.log(`${name}: ${run.error.message} (${most} minutes at most)`);
  return run.status === 0;
}

/** A tool whose success is one passed check. */
export function check(what: string, ...runs: [keyof typeof TOOLS, string[]][]): Tally {
  return runs.every(([name, args]) => tool(name, args)) ? passedOne() : failedOne(`failed: ${what}`);
}

/** Runs Vitest with a configuration and counts its tests. `name` tells runs of one configuration apart. */
export function vitest(config: string, long: boolean, name = ''): Tally {
  const out = join(ROOT, '.test', `${`${config} ${name}`.trim().replace(/\W+/g, '-')}.json`);
  mkdirSync(join(ROOT, '.test'), { recursive: true });
  rmSync(out, { force: true });
  const args = ['run', '--config', config, '--reporter=default', '--reporter=json', `--outputFile.json=${out}`];
  const endedWell = long ? tool('vitest', args, 120, { BEDPLATE_LONG: '1' }) : tool('vitest', args, 8);
  if (!existsSync(out)) return failedOne(`failed: ${config}: the tests did not run to their end`);
  return countReport(JSON.parse(readFileSync(out, 'utf8')), endedWell, ROOT);
}
