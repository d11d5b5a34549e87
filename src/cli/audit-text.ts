import type { Audit, Finding, Known, Standing } from '../audit/types';
import type { Knowledge } from '../pack/knowledge';
import { cli } from '../text/catalogue/cli';
import { priceTexts } from '../text/catalogue/prices';
import { beside, hanging, widthOf, wrap } from './layout';
import { followsText, likelyText, settleText } from './likely-text';
import { printable } from './printable';

const texts = cli.audit;
const ORDER: readonly Standing[] = ['disproved', 'unproved', 'caution', 'agrees'];

/** An audit for a terminal: what it is, each finding as said beside known, what to ask, the price. */
export function auditText(audit: Audit, knowledge: Pick<Knowledge, 'models'>, width: number): string {
  const labelOf = (ref: string) => printable(knowledge.models.get(ref)?.label ?? ref);
  const blocks = [
    headOf(audit, labelOf, width),
    wrap(summaryOf(audit.findings), width),
    ...ORDER.map((standing) => findingsOf(audit.findings, standing, width)),
    likelyText(audit, width),
    kindText(audit, width),
    settleText(audit, width),
    asksOf(audit, width),
    priceOf(audit, width),
  ];
  const lines = blocks.filter((block) => block.length > 0).map((block) => block.join('\n'));
  return `${lines.join('\n\n')}\n`;
}

/** Below this a kind is one of several, and what is so of it would mislead. */
const AS_LIKELY_AS_NOT = 0.33;

/** Of a machine of which no model is known: what is so of the kind that it most likely is. */
function kindText({ claimedModel, likely: [first] }: Audit, width: number): string[] {
  const isKind = claimedModel === null && first?.kind === 'type' && first.probability >= AS_LIKELY_AS_NOT;
  return isKind ? followsText(first, width) : [];
}

function headOf(audit: Audit, labelOf: (ref: string) => string, width: number): string[] {
  const { listing, serial } = audit;
  const title = wrap(printable(listing.title) || texts.untitled, width);
  const serialText = serial.asWritten
    ? `${printable(serial.asWritten)}: ${texts.verdicts[serial.verdict]}`
    : texts.noSerial;
  const packs = audit.packs.map((pack) => texts.pack(pack.id, pack.edition, pack.sealedBy));
  const rows: [string, string | null][] = [
    [texts.facts.kind, texts.kinds[audit.kind]],
    [texts.facts.price, priceText(audit)],
    [texts.facts.claims, audit.claimedModel ? labelOf(audit.claimedModel) : texts.noClaim],
    [texts.facts.serial, serialText],
    [texts.facts.condition, listing.condition],
    [texts.facts.place, listing.place],
    [texts.facts.packs, packs.join('; ') || texts.noPack],
  ];
  const indent = Math.max(...rows.map(([label]) => label.length)) + 2;
  return [
    ...title,
    '='.repeat(Math.min(width, Math.max(...title.map(widthOf)))),
    ...rows.flatMap(([label, text]) => (text ? hanging(label, printable(text), indent, width) : [])),
  ];
}

function priceText(audit: Audit): string {
  const { price } = audit.listing;
  if (!price) return texts.noPrice;
  return `${price.amount} ${price.currency ?? `(${texts.currencyOpen})`}, ${texts.hows[price.how]}`;
}

function summaryOf(findings: readonly Finding[]): string {
  const parts = ORDER.flatMap((standing) => {
    const count = findings.filter((finding) => finding.standing === standing).length;
    return count > 0 ? [texts.summary.parts[standing](count)] : [];
  });
  return parts.length > 0 ? `${parts.join(', ')}.` : texts.summary.nothing;
}

function findingsOf(findings: readonly Finding[], standing: Standing, width: number): string[] {
  const chosen = findings.filter((finding) => finding.standing === standing);
  if (chosen.length === 0) return [];
  const heading = texts.standings[standing];
  const body = chosen.map((finding, i) => findingOf(finding, `${i + 1}.`, width).join('\n'));
  return [heading, '-'.repeat(heading.length), body.join('\n\n')];
}

const INDENT = 4;

function findingOf(finding: Finding, number: string, width: number): string[] {
  const text = hanging(number, printable(finding.text), INDENT, width);
  // A caution's own words are the finding already: then only where they come from is left to tell.
  const told = finding.known.every((entry) => entry.text === finding.text);
  if (finding.said.length === 0 && told) {
    return [...text, ...finding.known.flatMap((entry) => hanging('', originOf(entry), INDENT, width))];
  }
  const left = Math.floor((width - INDENT - 3) / 2);
  const right = width - INDENT - 3 - left;
  const said = finding.said.flatMap((quote) =>
    wrap(`"${printable(quote.quote)}" (${texts.fields[quote.field]})`, left),
  );
  const entries = finding.known.map((entry) => [
    ...(told ? [] : wrap(printable(entry.text), right)),
    ...wrap(originOf(entry), right),
  ]);
  const known = [...new Map(entries.map((lines) => [lines.join('\n'), lines])).values()].flat();
  if (said.length === 0) said.push(...wrap(texts.nothingSaid, left));
  return [...text, ...beside([`${texts.said}:`, ...said], [`${texts.known}:`, ...known], left, INDENT)];
}

function originOf(entry: Known): string {
  return `[${entry.pack}/${entry.entry}${entry.source ? `; ${printable(entry.source)}` : ''}]`;
}

/** Each question once, those of the findings first. */
function asksOf(audit: Audit, width: number): string[] {
  const asks = [
    ...audit.findings.flatMap((finding) => (finding.ask ? [finding.ask] : [])),
    ...audit.nextEvidence.map((each) => each.ask),
  ];
  const once = [...new Set(asks.map(printable))];
  if (once.length === 0) return [];
  return [texts.ask, '-'.repeat(texts.ask.length), ...once.flatMap((ask) => hanging('  -', ask, INDENT, width))];
}

function priceOf(audit: Audit, width: number): string[] {
  const { standing, why, ratio, converted, taken, band, factors } = audit.price;
  if (!audit.listing.price && !band) return [];
  const sentences: string[] = [why ? priceTexts.why[why] : texts.price.standings[standing]];
  if (taken) sentences.push(priceTexts.taken(taken));
  if (converted) sentences.push(priceTexts.converted(converted, `${money(converted.amount)} ${converted.to}`));
  if (band) {
    sentences.push(texts.price.band(money(band.low), money(band.mid), money(band.high), band.currency));
    sentences.push(texts.price.half(money(band.half.low), money(band.half.high)), texts.price.of[band.kind]);
    if (ratio !== null) sentences.push(texts.price.ratio(ratio.toFixed(2)));
    sentences.push(texts.price.stands(band.observations, String(Number(band.effective.toFixed(1)))));
    sentences.push(...factors.map(({ text, times }) => priceTexts.factor(printable(text), String(times))));
  }
  return [texts.price.heading, '-'.repeat(texts.price.heading.length), ...wrap(sentences.join(' '), width)];
}

/** Three significant digits and more where there are cents: a band is no more exact than that. */
function money(amount: number): string {
  return amount >= 100 ? String(Math.round(amount)) : amount.toFixed(2).replace(/\.00$/, '');
}
