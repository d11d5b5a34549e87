import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { parseSync } from 'vite';
import { ROOT } from '../../steps/root';

/** A file's path from the project's folder, with forward slashes, and its text. */
export interface SourceFile {
  path: string;
  text: string;
}

/** A node of the syntax tree (ESTree with TypeScript and JSX). */
export interface SyntaxNode {
  type: string;
  [key: string]: unknown;
}

/** All files below the folders whose name ends in one of the endings, whether committed yet or not. */
export function filesBelow(folders: string[], endings: string[]): SourceFile[] {
  return folders.flatMap((folder) =>
    readdirSync(`${ROOT}/${folder}`, { recursive: true, encoding: 'utf8' })
      .map((name) => `${folder}/${name.replaceAll('\\', '/')}`)
      .filter((path) => endings.some((ending) => path.endsWith(ending)))
      .sort()
      .map((path) => ({ path, text: readFileSync(`${ROOT}/${path}`, 'utf8') })),
  );
}

/** The paths that are committed or staged. */
export function committedPaths(): string[] {
  const listed = execFileSync('git', ['ls-files', '-z'], { cwd: ROOT, encoding: 'utf8' });
  return listed.split('\0').filter(Boolean);
}

/** @throws Error where the file is not valid TypeScript. */
export function syntaxOf(file: SourceFile): SyntaxNode {
  const { program, errors } = parseSync(file.path, file.text);
  if (errors[0]) throw new Error(`${file.path}: ${errors[0].message}`);
  return program as unknown as SyntaxNode;
}

/** Every node below and including this one, parents first. */
export function* walk(node: SyntaxNode): Generator<SyntaxNode> {
  yield node;
  for (const value of Object.values(node)) {
    for (const child of Array.isArray(value) ? value : [value]) if (isNode(child)) yield* walk(child);
  }
}

export function isNode(value: unknown): value is SyntaxNode {
  return typeof value === 'object' && value !== null && typeof (value as SyntaxNode).type === 'string';
}
