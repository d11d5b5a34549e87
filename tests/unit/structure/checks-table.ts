import type { SourceFile } from './source-files';

const BEGIN = '<!-- checks -->';
const END = '<!-- /checks -->';

export interface CheckRow {
  id: string;
  /** What its function's docstring says first, or null where there is none. */
  does: string | null;
}

/** One row for each file in src/audit/checks: its name is the check's id, its function is named after it. */
export function checkRows(files: readonly SourceFile[]): CheckRow[] {
  return files
    .map(({ path, text }) => ({ id: path.replace(/^.*\/|\.ts$/g, ''), text }))
    .filter(({ id }) => id !== 'index')
    .sort((a, b) => (a.id < b.id ? -1 : 1))
    .map(({ id, text }) => ({ id, does: firstSentence(text, camelCase(id)) }));
}

/** The guide with the table of checks made anew between its two marks. Throws where a mark is missing. */
export function withChecksTable(guide: string, rows: readonly CheckRow[]): string {
  const [begin, end] = [guide.indexOf(BEGIN), guide.indexOf(END)];
  if (begin < 0 || end < begin) throw new Error(`no ${BEGIN} … ${END} in the guide`);
  const lines = rows.map(({ id, does }) => `| \`${id}\` | ${(does ?? '').replaceAll('|', '\\|')} |`);
  return `${guide.slice(0, begin + BEGIN.length)}\n\n| check | what it does |\n|---|---|\n${lines.join('\n')}\n\n${guide.slice(end)}`;
}

function camelCase(id: string): string {
  return id.replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase());
}

function firstSentence(text: string, name: string): string | null {
  const before = text.split(new RegExp(`\\nexport function ${name}\\b`))[0]!;
  if (before === text) return null;
  const comment = /\/\*\*((?:(?!\*\/)[\s\S])*)\*\/\s*$/.exec(before)?.[1];
  if (!comment) return null;
  const words = comment
    .replace(/\n\s*\*?/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();
  return /^.*?[.?!](?= |$)/.exec(words)?.[0] ?? null;
}
