import { CONTROL, type Line } from '../types';
import { amountsIn } from './amounts';
import { isOnly, type Reading, runsOf } from './reading';

/** Amounts on buttons side by side are to be chosen from: offers to make, sums to give. */
export function isOneOfButtons({ lines }: Reading, index: number): boolean {
  const isButton = (line: Line | undefined) =>
    line !== undefined && isOnly(line, CONTROL) && amountsIn(line.text).length > 0;
  const line = lines[index]!;
  const inside = runsOf(line).filter(({ text, flags }) => flags & CONTROL && amountsIn(text).length > 0);
  return (isButton(line) && (isButton(lines[index - 1]) || isButton(lines[index + 1]))) || inside.length > 1;
}
