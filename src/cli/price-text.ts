import { moneyText } from '../audit/money-text';
import type { PastTold, PriceAnswer, PriceAsked } from '../audit/price-enquiry';
import { cli } from '../text/catalogue/cli';
import { priceCliTexts as texts } from '../text/catalogue/price-cli';
import { priceTableTexts } from '../text/catalogue/price-table';
import { priceTexts } from '../text/catalogue/prices';
import { hanging, wrap } from './layout';
import { printable } from './printable';

/** So many prices and alternatives are told in words; all of them stand in the JSON. */
const MOST_SEEN = 12;

/** A price enquiry laid out for a terminal. */
export function priceText(answer: PriceAnswer, asking: PriceAsked['asking'], width: number): string {
  const blocks = [
    head(answer, asking, width),
    seenText(answer, width),
    factorText(answer, width),
    launchText(answer.launch, width),
    listed(texts.suits, answer.suits.good, width),
    listed(texts.poor, answer.suits.poor, width),
    alternativeText(answer, width),
  ];
  return blocks.flatMap((block) => (block.length > 0 ? [block.join('\n')] : [])).join('\n\n');
}

function head(answer: PriceAnswer, asking: PriceAsked['asking'], width: number): string[] {
  const { band, why, ratio, converted, plain, stated, index } = answer;
  const title = printable(texts.heading(answer.label, answer.grade?.label ?? null, answer.asOf));
  const sentences: string[] = [];
  if (asking || !band) {
    const place = why ? priceTexts.why[why] : cli.audit.price.standings[answer.standing];
    sentences.push(asking ? `${moneyText(String(asking.amount), asking.currency)}: ${place}` : place);
  }
  if (converted) sentences.push(priceTexts.converted(converted, whole(converted.amount, converted.to)));
  if (ratio !== null) sentences.push(cli.audit.price.ratio(ratio.toFixed(2)));
  if (band) {
    const { price } = cli.audit;
    sentences.push(price.band(short(band.low), short(band.mid), short(band.high), band.currency));
    sentences.push(price.half(short(band.half.low), short(band.half.high)), price.of[band.kind]);
    sentences.push(price.stands(band.observations, String(Number(band.effective.toFixed(1)))));
  }
  if (plain) sentences.push(texts.plain(short(plain.low), short(plain.mid), short(plain.high)));
  if (stated) sentences.push(texts.stated(stated.pack, stated.entry, stated.date, stated.source));
  if (index) sentences.push(texts.index(index.last, index.source));
  return [...under(title), ...wrap(printable(sentences.join(' ')), width)];
}

function seenText({ seen, band }: PriceAnswer, width: number): string[] {
  if (seen.length === 0 || !band) return [];
  return listed(
    texts.seen,
    seen.slice(0, MOST_SEEN).map((one) => {
      const counted =
        one.price === null
          ? texts.leftOut(priceTableTexts.leftOut[one.leftOut!])
          : texts.counted(whole(one.price, band.currency), one.counted.toFixed(2));
      const amount = moneyText(String(one.amount), one.currency);
      return texts.seenLine(priceTexts.kinds[one.kind], amount, one.date, one.label, one.grade, counted);
    }),
    width,
  );
}

function factorText({ factors }: PriceAnswer, width: number): string[] {
  const lines = factors.map(({ text, times, source }) => texts.factor(text, String(times), source));
  return listed(texts.factors, lines, width);
}

function launchText(launch: PastTold | null, width: number): string[] {
  if (!launch) return [];
  const { amount, currency, date, today, weeks } = launch;
  const lines = [texts.past(moneyText(String(amount), currency), date)];
  if (today) lines.push(texts.pastToday(whole(today.amount, currency), today.last, today.source));
  if (weeks) lines.push(texts.pastWeeks(weeks.number.toFixed(1), weeks.last, weeks.source));
  return listed(texts.launch, lines, width);
}

function alternativeText({ alternatives }: PriceAnswer, width: number): string[] {
  if (alternatives.length === 0) return [];
  const lines = alternatives.flatMap(({ label, band, here, common, differs }) => [
    ...hanging(
      '  -',
      printable(
        texts.alternative(label, whole(band!.low, band!.currency), whole(band!.high, band!.currency)) +
          (here ? texts.alternativeHere(whole(here.low, here.currency), whole(here.high, here.currency)) : ''),
      ),
      4,
      width,
    ),
    ...hanging('    ', printable(texts.common(common.join('; '))), 6, width),
    ...differs.flatMap(({ change, name, here, there }) => {
      const text = change === 'other' ? texts.differs(name, there, here) : texts[change](name);
      return hanging('    ', printable(text), 6, width);
    }),
  ]);
  return [...under(texts.alternatives), ...lines];
}

function listed(title: string, lines: readonly string[], width: number): string[] {
  if (lines.length === 0) return [];
  return [...under(title), ...lines.flatMap((line) => hanging('  -', printable(line), 4, width))];
}

function under(title: string): string[] {
  return [title, '-'.repeat(title.length)];
}

function whole(amount: number, currency: string): string {
  return moneyText(short(amount), currency);
}

/** No more exact than a band is. */
function short(amount: number): string {
  return amount >= 100 ? String(Math.round(amount)) : amount.toFixed(2).replace(/\.00$/, '');
}
