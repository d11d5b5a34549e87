import type { Audit, Ground, Likely, NextEvidence } from '../audit/types';
import { identifyCliTexts as texts } from '../text/catalogue/identify-cli';
import { hanging } from './layout';
import { printable } from './printable';

const LEAD = 7;
/** Grounds of each side that are told: the weightiest. */
const MOST_GROUNDS = 3;
/** How many of them are told in full. */
const MOST_REASONED = 2;

/** What it most likely is, with what speaks for and against the first ones. */
export function likelyText({ likely }: Audit, width: number): string[] {
  if (likely.length === 0) return [];
  const rows = likely.flatMap((one, i) => [
    ...hanging(percent(one.probability).padStart(5), printable(one.label), LEAD, width),
    ...(one.restsOn === 'serial' ? hanging('', texts.restsOn, LEAD, width) : []),
    ...(i < MOST_REASONED
      ? [...grounds(texts.for, one.for, width), ...grounds(texts.against, one.against, width)]
      : []),
  ]);
  return [texts.likely, '-'.repeat(texts.likely.length), ...rows];
}

/** Nothing is wholly certain, and nothing here is shown as if it were. */
function percent(share: number): string {
  return share > 0.99 ? '>99 %' : `${Math.round(share * 100)} %`;
}

function grounds(lead: string, all: readonly Ground[], width: number): string[] {
  return all
    .slice(0, MOST_GROUNDS)
    .flatMap(({ text, bits }, i) =>
      hanging(
        `${' '.repeat(LEAD)}${i === 0 ? `${lead}:` : ''}`,
        `${printable(text)} ${texts.bits(Math.abs(bits).toFixed(1))}`,
        LEAD + texts.against.length + 2,
        width,
      ),
    );
}

/** What would settle it: each question, where to look and what can be answered. atHand: the thing stands before you. */
export function settleText({ likely, nextEvidence }: Audit, width: number, atHand = false): string[] {
  if (likely.length === 0) return [];
  const heading = [texts.settle, '-'.repeat(texts.settle.length)];
  if (nextEvidence.length === 0) return [...heading, texts.enough];
  return [...heading, ...nextEvidence.flatMap((one, i) => question(one, `${i + 1}.`, width, atHand))];
}

function question(one: NextEvidence, number: string, width: number, atHand: boolean): string[] {
  const rows: [string, string][] = [
    [texts.where, one.where],
    ...(one.see ? [[texts.see, one.see] as [string, string]] : []),
    ...(one.options.length > 0
      ? [[texts.answers, one.options.map(({ value, text }) => `${value} (${text})`).join(', ')] as [string, string]]
      : []),
  ];
  const name = one.attribute.slice(one.attribute.indexOf('/') + 1);
  const head = `${atHand ? one.name : texts.effort(one.name, one.effort)} [${name}; ${one.bits.toFixed(2)} bits]`;
  return [
    ...hanging(number, printable(head), 4, width),
    ...rows.flatMap(([lead, text]) => hanging(`    ${lead}:`, printable(text), 14, width)),
  ];
}

/** What is so of the likeliest one. */
export function followsText(one: Likely | undefined, width: number): string[] {
  if (!one || one.follows.length === 0) return [];
  const heading = texts.follows(printable(one.label));
  const indent = Math.max(...one.follows.map(({ name }) => name.length)) + 2;
  return [
    heading,
    '-'.repeat(Math.min(width, heading.length)),
    ...one.follows.flatMap(({ name, text, usually }) =>
      hanging(printable(name), printable(usually ? texts.usually(text) : text), indent, width),
    ),
  ];
}
