import { fold } from '../../text/fold';
import { CONTROL, LINK, type Line } from '../types';
import { amountsIn } from './amounts';
import { isInLabelledRow, isInListOfAdvert, isInPairs } from './facts';
import { headingLabel } from './heading-labels';
import { isSentence, PROSE } from './prose';
import { boxOf, isOnly, levelOf, type Reading, runsOf } from './reading';
import { rowLabel } from './row-labels';
import { isOfTrade } from './trade';

/** Another's words in a post: lines behind ">", and who wrote them. The languages of the labels. */
const QUOTED =
  /^>|^(?:on|am|le|op|il|el|den|em|dnia) .{3,80}(?:wrote|schrieb.{0,30}|a ecrit|schreef.{0,30}|ha scritto|escribio|skrev.{0,30}|napisal.{0,20}) ?:$/;
export const isQuoted = (text: string): boolean =>
  text.startsWith('>') || (text.length <= 120 && text.endsWith(':') && QUOTED.test(fold(text).text));

/** What unfolds a text, and folds it again, on whatever it is written. */
const UNFOLDS =
  /^\W*(?:(?:(?:read|show|see|view) )?(?:more|less)|mehr (?:lesen|anzeigen)|weiterlesen|(?:lire|voir) (?:la suite|plus)|(?:lees|toon) meer|(?:leggi|mostra) (?:tutto|altro)|(?:leer|ver) (?:mas|toda))(?: .*descri.*)?\W*$/;

/** Not a control, a label, a row of links; `strict` also leaves out what prose does not hold: rows, headings, prices. */
export function isOwnWord(reading: Reading, index: number, strict: boolean): boolean {
  const line = reading.lines[index]!;
  if (index === reading.titleLine || isOnly(line, CONTROL)) return false;
  if (line.text.length < 50 && UNFOLDS.test(fold(line.text).text)) return false;
  const box = boxOf(reading, index);
  if (headingLabel(line.text) === 'description' && line.text.length < 40) return false;
  if (!strict) return !(isOnly(line, LINK) && line.text.length < PROSE);
  if (isOfTrade(reading, index)) return false;
  if (levelOf(reading, index) > 0 || isInLabelledRow(reading, index) || box.tag === 'dt') return false;
  if (box.tag === 'dd' && !isSentence(line)) return false;
  if (isInListOfAdvert(reading, index) || isInPairs(reading, index)) return false;
  if (isOnly(line, LINK) || rowLabel(line.text)) return false;
  const first = runsOf(line)[0]!.text;
  if (first.length < line.text.length && rowLabel(first.trim())) return false;
  const colon = /^([^:]{1,40}):\s/.exec(line.text);
  if (colon && rowLabel(colon[1]!)) return false;
  return !isAmount(line);
}

/** An amount, and little else. */
export const isAmount = ({ text }: Line): boolean =>
  text.length < 40 && amountsIn(text).some((amount) => amount.end - amount.start > text.length / 2);
