import { importsOf, packageOf } from './imports';
import type { SourceFile } from './source-files';

export interface Manifest {
  dependencies?: Record<string, string>;
  devDependencies?: Record<string, string>;
  scripts?: Record<string, string>;
}

/** Programs that are started, not imported: the package, and the word by which scripts and the test runner start it. */
const PROGRAMS: Record<string, string> = {
  '@biomejs/biome': 'biome',
  typescript: 'tsc',
  tsx: 'tsx',
  vitest: 'vitest',
  wxt: 'wxt',
};

/** A module of the builder puts a package in the place of its own: used by being named in the configuration. */
const PUT_IN_BY: Record<string, string> = { 'webextension-polyfill': '@wxt-dev/webextension-polyfill' };

/** Dependencies that nothing imports or starts, and packages that are imported without being a dependency. */
export function usageProblems(manifest: Manifest, files: readonly SourceFile[]): string[] {
  const named = namesOf(manifest);
  /** Taken by name without an import: a script that is put into a page, a package without modules. */
  const lookedUp = (name: string) =>
    files.some(({ text }) =>
      ['', '.resolve'].some((way) => text.includes(`createRequire(import.meta.url)${way}('${name}`)),
    );
  const imported = new Set(files.flatMap((file) => importsOf(file).map(packageOf)).filter((name) => name !== null));
  const inModules = (name: string) => files.some(({ text }) => new RegExp(`modules: \\[[^\\]]*'${name}'`).test(text));
  const scripts = Object.values(manifest.scripts ?? {}).join('\n');
  const used = (name: string) =>
    imported.has(name) ||
    lookedUp(name) ||
    inModules(PUT_IN_BY[name] ?? name) ||
    (PROGRAMS[name] !== undefined && new RegExp(`\\b${PROGRAMS[name]}\\b`).test(scripts));
  const unused = named.filter((name) => {
    const typed = /^@types\/(.+)$/.exec(name)?.[1];
    if (typed === undefined) return !used(name);
    return typed !== 'node' && !used(typed.replace(/^(.+)__(.+)$/, '@$1/$2'));
  });
  const strangers = [...imported].filter((name) => !named.includes(name));
  return [
    ...unused.map((name) => `${name}: nothing imports or starts it`),
    ...strangers.map((name) => `${name}: imported, but no dependency`),
  ];
}

/** Dependencies without a row "| `name` | reason |" in the guide, and rows of what is no dependency. */
export function reasonProblems(manifest: Manifest, guide: string): string[] {
  const reasons = new Map<string, string>();
  for (const [, cell = '', reason = ''] of guide.matchAll(/^\| (`[^|]+) \| ([^|]+) \|$/gm)) {
    for (const [, name = ''] of cell.matchAll(/`([^`]+)`/g)) reasons.set(name, reason.trim());
  }
  const named = namesOf(manifest);
  return [
    ...named.filter((name) => (reasons.get(name) ?? '').length < 20).map((name) => `${name}: no reason is given`),
    ...[...reasons.keys()]
      .filter((name) => !named.includes(name))
      .map((name) => `${name}: a reason, but no dependency`),
  ];
}

/** Versions are exact: the same tree tomorrow. */
export function versionProblems(manifest: Manifest): string[] {
  return Object.entries({ ...manifest.dependencies, ...manifest.devDependencies })
    .filter(([, version]) => !/^\d+\.\d+\.\d+(?:-[\w.]+)?$/.test(version))
    .map(([name, version]) => `${name}: ${version} is not one exact version`);
}

function namesOf(manifest: Manifest): string[] {
  return [...Object.keys(manifest.dependencies ?? {}), ...Object.keys(manifest.devDependencies ?? {})];
}
