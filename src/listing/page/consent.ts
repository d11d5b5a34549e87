import { fold } from '../../text/fold';
import { type Reading, sizeOf } from './reading';

/** How consent texts speak, in the languages of the labels. Common usage, from memory. */
const CONSENT =
  /\b(?:cookies?|consent|legitimate (?:business )?interests?|our (?:\d+ )?partners|\d+ partners|browsing data|device scanning|unique identifiers|einwilligung|berechtigt\w+ interesse\w*|\d+ partner|speicherdauer|geraet|endgerat|kennungen|consentement|interet legitime|nos (?:\d+ )?partenaires|toestemming|gerechtvaardigd belang|onze (?:\d+ )?partners|bewaartermijn|consenso|interesse legittimo|legittimo interesse|nostri (?:\d+ )?partner|consentimiento|interes legitimo|nuestros (?:\d+ )?socios|personali[sz]ed (?:ads|advertising|content)|personalisierte (?:anzeigen|werbung)|publicites? personnalisees?|samtycke|samtykke|zgod[ay] na)(?!\w)/;
/** So many parts alike speak of it. */
const PARTS_LEAST = 3;
const LONG = 60;
/** A sentence told so often on a page is nobody's own. */
const OFTEN = 3;
const SENTENCE_LEAST = 40;

interface Part {
  from: number;
  to: number;
  /** Its long lines: all, those that speak of consent, and those that are told again and again. */
  all: number;
  speaks: number;
  again: number;
}

/**
 * The texts about consent, as lines from and to, whatever their boxes are called: parts of one box, most of which speak of
 * it or say sentences that the page says again and again, from the first of them to the last.
 */
export function consentIn({ lines, boxes }: Reading): [from: number, to: number][] {
  const long = new Map<number, string[]>();
  const told = new Map<string, number>();
  for (const [index, { text }] of lines.entries()) {
    if (text.length < LONG) continue;
    const sentences = text.slice(0, 1500).split(/(?<=[.!?;])\s+/);
    long.set(index, sentences);
    for (const sentence of new Set(sentences)) told.set(sentence, (told.get(sentence) ?? 0) + 1);
  }
  const parts = new Map<number, Map<number, Part>>();
  for (const [index, sentences] of long) {
    const { text, box } = lines[index]!;
    const speaks = CONSENT.test(fold(text.slice(0, 1500)).text) ? 1 : 0;
    const again = sentences.some((one) => one.length >= SENTENCE_LEAST && told.get(one)! >= OFTEN) ? 1 : 0;
    // The line is a part of the first box that holds more, and each box of the one around it.
    let part = -1 - index;
    let span = { from: index, to: index + 1 };
    for (let at = box; at >= 0; at = boxes[at]!.parent) {
      const own = boxes[at]!;
      if (sizeOf(own) === span.to - span.from) continue;
      const its = parts.get(at) ?? new Map<number, Part>();
      parts.set(at, its);
      const same = its.get(part) ?? { from: span.from, to: span.to, all: 0, speaks: 0, again: 0 };
      same.all++;
      same.speaks += speaks;
      same.again += again || speaks;
      its.set(part, same);
      part = at;
      span = own;
    }
  }
  const found: [number, number][] = [];
  for (const its of parts.values()) {
    if (its.size < PARTS_LEAST) continue;
    const all = [...its.values()].sort((a, b) => a.from - b.from);
    const such = all.filter((one) => one.again > 0 && one.again >= one.all * 0.5);
    const speaking = such.filter(({ speaks }) => speaks > 0).length;
    if (such.length < PARTS_LEAST || speaking < such.length * 0.3 || such.length < all.length * 0.5) continue;
    found.push([such[0]!.from, such.at(-1)!.to]);
  }
  return found;
}
