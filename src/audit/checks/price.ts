import { findingTexts } from '../../text/catalogue/findings';
import type { AuditCase } from '../case';
import { moneyText } from '../money-text';
import type { Finding, Standing } from '../types';
import { say } from '../words';

const texts = findingTexts.price;

/** Where the asking price stands on the band of such a thing in such a condition. A price is never disproved. */
export function price({ price: { report, band, model }, listing, knowledge }: AuditCase): Finding[] {
  const text = {
    above: texts.above,
    'high-side': texts.highSide,
    within: texts.within,
    'low-side': texts.lowSide,
    below: texts.below,
    'not-comparable': null,
    'no-band': null,
  }[report.standing];
  if (!text || !band || !model || !listing.price) return [];
  const standing: Standing = report.standing === 'within' ? 'agrees' : 'caution';
  const { def, pack, entry, source } = band.from[0]!;
  const grade = knowledge.packs.find((one) => one.id === pack)?.grades.find((one) => one.id === band.grade);
  const money = (amount: number): string => moneyText(String(Math.round(amount)), band.currency);
  return [
    {
      id: 'price',
      check: 'price',
      standing,
      attribute: null,
      said: [{ field: 'price', quote: listing.priceText, start: 0, end: listing.priceText.length }],
      known: [
        {
          pack,
          entry,
          text: texts.known(model.label, grade ? say(grade.label) : '', money(band.low), money(band.high), def.date),
          source,
        },
      ],
      text: text(listing.priceText, model.label),
      ask: null,
    },
  ];
}
