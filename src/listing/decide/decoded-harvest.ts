import type { Harvest, Line } from '../types';
import { wellDecoded } from './mis-decoded';

/**
 * A harvest whose visible text, title and head are as they were meant, where their UTF-8 was taken for windows-1252: signs
 * of money and dates are told before anything is decided. The same object where nothing was broken.
 */
export function wellDecodedHarvest(harvest: Harvest): Harvest {
  const lines = harvest.page.lines.map(decodedLine);
  const isSound = lines.every((line, index) => line === harvest.page.lines[index]);
  const title = wellDecoded(harvest.title);
  if (isSound && title === harvest.title) return harvest;
  return {
    ...harvest,
    title,
    metas: harvest.metas.map(([name, content]) => [name, wellDecoded(content)]),
    page: {
      ...harvest.page,
      lines,
      pictures: harvest.page.pictures.map((picture) =>
        picture.alt === undefined ? picture : { ...picture, alt: wellDecoded(picture.alt) },
      ),
    },
  };
}

/** Run by run, so that each keeps its own beginning. */
function decodedLine(line: Line): Line {
  const text = wellDecoded(line.text);
  if (text === line.text) return line;
  if (!line.runs) return { ...line, text };
  let whole = '';
  const runs = line.runs.map((run, index) => {
    const at = whole.length;
    whole += wellDecoded(line.text.slice(run.at, line.runs![index + 1]?.at ?? line.text.length));
    return { ...run, at };
  });
  return { ...line, text: whole, runs };
}
