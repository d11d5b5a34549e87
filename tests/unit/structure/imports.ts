import { posix } from 'node:path';
import { isNode, type SourceFile, type SyntaxNode, syntaxOf, walk } from './source-files';

/** What a file names as a source, static or dynamic, imports of types included, as written. */
export function importsOf(file: SourceFile): string[] {
  const found: string[] = [];
  for (const node of walk(syntaxOf(file))) {
    const { source } = node;
    if (node.type === 'TSImportType') add(found, node.argument ?? source);
    else if (IMPORTING.has(node.type)) add(found, source);
  }
  return found;
}

const IMPORTING = new Set(['ImportDeclaration', 'ExportNamedDeclaration', 'ExportAllDeclaration', 'ImportExpression']);

function add(found: string[], source: unknown): void {
  if (!isNode(source)) return;
  const value = source.value ?? (isNode(source.literal) ? source.literal.value : undefined);
  if (typeof value === 'string') found.push(value);
}

/** The path of the project that a relative import leads to, without its ending; null for a package. */
export function targetOf(file: SourceFile, source: string): string | null {
  if (!source.startsWith('.')) return null;
  return posix.join(posix.dirname(file.path), source);
}

/** The package that an import names: "a/b" -> "a", "@a/b/c" -> "@a/b"; null for own files and Node's modules. */
export function packageOf(source: string): string | null {
  if (source.startsWith('.') || source.startsWith('node:')) return null;
  return source
    .split('/')
    .slice(0, source.startsWith('@') ? 2 : 1)
    .join('/');
}

/** Does the file hand on what another file made, by `export ... from` or by exporting what it imported? */
export function reExports(file: SourceFile): boolean {
  const program = syntaxOf(file);
  const body = (program.body as SyntaxNode[]) ?? [];
  const imported = new Set(
    body
      .filter((node) => node.type === 'ImportDeclaration')
      .flatMap((node) => node.specifiers as { local: { name: string } }[])
      .map((specifier) => specifier.local.name),
  );
  return body.some((node) => {
    if (node.type === 'ExportAllDeclaration') return true;
    if (node.type !== 'ExportNamedDeclaration') return false;
    if (isNode(node.source)) return true;
    return (node.specifiers as { local: { name?: string } }[]).some(({ local }) => imported.has(local.name ?? ''));
  });
}
