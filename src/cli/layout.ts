/** Plain text laid out in columns of characters; wide (East Asian) and combining characters count as they are drawn. */

const WIDE = /\p{Emoji_Presentation}|[\u1100-\u115f\u2e80-\ua4cf\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff00-\uff60]/u;

export function widthOf(text: string): number {
  let width = 0;
  for (const c of text) width += /\p{M}|\u200b|\u200d/u.test(c) ? 0 : WIDE.test(c) ? 2 : 1;
  return width;
}

/** Lines no wider than `width`; words that are longer are cut. Line breaks of the text stay. */
export function wrap(text: string, width: number): string[] {
  return text.split('\n').flatMap((line) => wrapLine(line, width));
}

function wrapLine(line: string, width: number): string[] {
  const lines: string[] = [];
  let current = '';
  for (const word of line.split(/\s+/).filter(Boolean)) {
    const joined = current ? `${current} ${word}` : word;
    if (widthOf(joined) <= width) {
      current = joined;
      continue;
    }
    if (current) lines.push(current);
    current = word;
    while (widthOf(current) > width) {
      const head = headOf(current, width);
      lines.push(head);
      current = current.slice(head.length);
    }
  }
  return current || lines.length === 0 ? [...lines, current] : lines;
}

/** As much of a long word as fits, cut after a slash or hyphen where there is a late one: ids are read in parts. */
function headOf(text: string, width: number): string {
  let head = '';
  for (const c of text) {
    if (head && widthOf(head + c) > width) break;
    head += c;
  }
  const joint = Math.max(head.lastIndexOf('/'), head.lastIndexOf('-')) + 1;
  return joint > head.length / 3 ? head.slice(0, joint) : head;
}

function padded(text: string, width: number): string {
  return text + ' '.repeat(Math.max(0, width - widthOf(text)));
}

/** The text, every line after `indent` spaces, the first after `lead`. */
export function hanging(lead: string, text: string, indent: number, width: number): string[] {
  return wrap(text, width - indent).map((line, i) => (i === 0 ? padded(lead, indent) : ' '.repeat(indent)) + line);
}

/** Two columns of lines side by side, with a rule between them. */
export function beside(left: string[], right: string[], leftWidth: number, indent: number): string[] {
  const rows = Math.max(left.length, right.length);
  return Array.from({ length: rows }, (_, i) =>
    `${' '.repeat(indent)}${padded(left[i] ?? '', leftWidth)} | ${right[i] ?? ''}`.trimEnd(),
  );
}

/** The width to lay out for: the terminal's, within 72 and 100 columns; 80 where there is none. */
export function pageWidth(columns: number | undefined): number {
  return Math.min(100, Math.max(72, columns ?? 80));
}
