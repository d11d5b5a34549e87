import { importsOf, reExports, targetOf } from './imports';
import type { SourceFile } from './source-files';

/** From the ground up; folders of one row are siblings and don't import each other. */
const FLOORS: readonly (readonly string[])[] = [
  ['text'],
  ['quantity'],
  ['listing', 'pack'],
  ['claims'],
  ['identify', 'price'],
  ['audit'],
  ['keep', 'sharing'],
  ['session'],
  ['view'],
  ['entrypoints', 'cli'],
];

const ENGINE = 'src/engine';

/** The room of a file or of what an import leads to: "src/text/fold" -> "text", "entrypoints/reader" -> "entrypoints". */
function roomOf(path: string): string | null {
  const [top, second, third] = path.split('/');
  if (top === 'entrypoints') return 'entrypoints';
  return top === 'src' && third !== undefined ? (second ?? null) : null;
}

function floorOf(room: string | null): number {
  return FLOORS.findIndex((floor) => floor.includes(room ?? ''));
}

/** What breaks "imports run downwards", one line each. */
export function floorProblems(files: readonly SourceFile[]): string[] {
  return files.flatMap((file) => {
    if (isEngine(file.path)) return importsOf(file).flatMap((source) => engineProblem(file, source));
    const room = roomOf(file.path);
    if (floorOf(room) < 0) return [`${file.path}: stands in no room of the layout`];
    const problems = importsOf(file).flatMap((source) => importProblem(file, room ?? '', source));
    return reExports(file)
      ? [...problems, `${file.path}: hands on what another file made; only ${ENGINE}.ts may`]
      : problems;
  });
}

function isEngine(path: string): boolean {
  return path.replace(/\.ts$/, '') === ENGINE;
}

/** The engine opens onto the pure floors only. */
function engineProblem(file: SourceFile, source: string): string[] {
  const target = targetOf(file, source);
  const floor = floorOf(target && roomOf(target));
  const ok = floor >= 0 && floor <= floorOf('audit');
  return ok ? [] : [`${file.path}: opens onto ${source}, which is not part of the pure engine`];
}

function importProblem(file: SourceFile, room: string, source: string): string[] {
  const target = targetOf(file, source);
  if (target === null) {
    const edge = room === 'cli' || !source.startsWith('node:');
    return edge ? [] : [`${file.path}: imports ${source}; only src/cli runs in Node`];
  }
  if (isEngine(target)) return room === 'cli' ? [] : [`${file.path}: goes through the engine's door; only src/cli may`];
  const there = roomOf(target);
  if (there === room) return [];
  const floor = floorOf(there);
  if (floor >= 0 && floor < floorOf(room)) return [];
  return [`${file.path}: imports ${target}, which does not stand below`];
}

/** Unit tests that stand where no file of src stands: tests/unit/a/b.test.ts is for src/a/b.ts, b.tsx or folder b. */
export function mirrorProblems(tests: readonly string[], sources: readonly string[]): string[] {
  const known = new Set<string>();
  for (const path of sources) {
    known.add(path.replace(/\.tsx?$/, ''));
    for (let at = path.lastIndexOf('/'); at > 0; at = path.lastIndexOf('/', at - 1)) known.add(path.slice(0, at));
  }
  return tests
    .filter((path) => /\.test\.tsx?$/.test(path) && !path.startsWith('tests/unit/structure/'))
    .filter((path) => {
      const below = path.slice('tests/unit/'.length).replace(/(\/?[^./]+)\.[^/]*$/, '$1');
      return !known.has(below.startsWith('entrypoints/') ? below : `src/${below}`);
    })
    .map((path) => `${path}: mirrors no file of src`);
}
