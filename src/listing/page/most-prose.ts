import { isProse, isSentence, LISTED } from './prose';
import { levelOf, type Reading, range, sizeOf } from './reading';
import { MAIN } from './zones';

/**
 * The boxes that hold most prose, best first, at most two: each sentence counts fully for the box around its paragraph,
 * half for the next. Of a box its lines from the first sentence to the last; where the paragraph of most words is of
 * another kind than what stands beside it (other names), those of its kind alone.
 */
export function mostProse(reading: Reading): number[][] {
  const { lines, boxes, zones, cards, titleLine } = reading;
  const scores = new Map<number, number>();
  const give = (box: number, points: number) => box >= 0 && scores.set(box, (scores.get(box) ?? 0) + points);
  const pointsOf = (text: string) =>
    Math.min(text.length, 1500) + 60 * (text.slice(0, 1500).match(/[,.;!?]/g)?.length ?? 0);
  // What is listed is seldom what is told.
  const share = (index: number) => (boxes[lines[index]!.box]!.tag === 'li' ? 0.5 : 1);
  const isOwn = (index: number) =>
    zones[index] === MAIN && !cards.lines.has(index) && isProse(lines[index]!) && levelOf(reading, index) === 0;
  for (const [index, line] of lines.entries()) {
    if (!isOwn(index)) continue;
    const points = pointsOf(line.text) * share(index);
    const own = boxes[line.box]!;
    const paragraph = sizeOf(own) === 1 || own.tag === 'p';
    const holder = paragraph ? own.parent : line.box;
    give(holder, points);
    // What stands beside a description in a list of them is another one.
    if (holder >= 0 && boxes[holder]!.tag !== 'dd') give(boxes[holder]!.parent, points / 2);
  }
  const best = [...scores].sort((a, b) => b[1] - a[1] || a[0] - b[0]).slice(0, 2);
  return best.map(([index]) => {
    let { from, to } = boxes[index]!;
    if (titleLine >= from && titleLine < to) {
      const prose = (start: number, end: number) =>
        range(start, end).reduce((sum, at) => sum + (isOwn(at) ? lines[at]!.text.length : 0), 0);
      // Some set the words over the name.
      if (prose(from, titleLine) > prose(titleLine + 1, to) * 2) to = titleLine;
      else from = titleLine + 1;
    }
    // From the first sentence to the last: short lines at either end are buttons, prices, dates.
    while (from < to && !isSentence(lines[from]!)) from++;
    const end = to;
    while (to > from && !isSentence(lines[to - 1]!)) to--;
    // The items of a list are no shorter words at the end.
    const isNext = (at: number) => at < end && LISTED.test(lines[at]!.text) && lines[at]!.box === lines[to - 1]!.box;
    if (to > from && lines[to]?.text.endsWith(':') && isNext(to + 1)) to++;
    while (to > from && isNext(to)) to++;
    const all = range(from, to);
    let longest = from;
    for (const at of all)
      if (isOwn(at) && pointsOf(lines[at]!.text) > pointsOf(lines[longest]?.text ?? '')) longest = at;
    const { tag, hint, parent } = boxes[lines[longest]?.box ?? 0]!;
    const isAlike = (at: number) => {
      const box = boxes[lines[at]!.box]!;
      if (lines[at]!.box === lines[longest]!.box) return true;
      return box.parent === parent && box.tag === tag
        ? box.hint === hint
        : /^(?:p|li|ul|ol|pre|blockquote)$/.test(box.tag) && box.hint === '' && hint === '';
    };
    const kind = all.filter(isAlike);
    const sum = (of: number[]) => of.reduce((total, at) => total + (isOwn(at) ? lines[at]!.text.length : 0), 0);
    // Text without paragraphs of its own, beside boxes of something else.
    const isLoose = kind.length > 1 && kind.every((at) => lines[at]!.box === lines[longest]!.box);
    return kind.length < all.length && (hint !== '' || isLoose) && sum(kind) >= sum(all) * 0.5 ? kind : all;
  });
}
