import { findingTexts } from '../../text/catalogue/findings';
import type { AuditCase } from '../case';
import { moneyText } from '../money-text';
import { serialsLabel, serialsModels } from '../serials-model';
import type { Finding, Known, Standing } from '../types';
import { saidOf, say } from '../words';

const texts = findingTexts.price;

/** Where the asking price stands on the band of such a thing in such a condition. A price is never disproved. */
export function price(auditCase: AuditCase): Finding[] {
  const { report, band, model, factors } = auditCase.price;
  const { listing } = auditCase;
  const text = {
    above: texts.above,
    'high-side': texts.highSide,
    within: texts.within,
    'low-side': texts.lowSide,
    below: texts.below,
    'not-comparable': null,
    'no-band': null,
  }[report.standing];
  if (!text || !band || !model || !listing.price || report.ratio === null) return [];
  const standing: Standing = report.standing === 'within' ? 'agrees' : 'caution';
  const middle = moneyText(String(Math.round(band.mid)), band.currency);
  const price = { field: 'price' as const, quote: listing.priceText, start: 0, end: listing.priceText.length };
  return [
    {
      id: 'price',
      check: 'price',
      standing,
      attribute: null,
      said: [price, ...factors.map(({ said }) => saidOf(said))],
      known: [...knownBand(auditCase), ...factors.map(factorKnown)],
      text: ofAnother(auditCase, text(listing.priceText, model.label, texts.ratio(report.ratio, middle))),
      ask: null,
    },
  ];
}

/** A band is of the model named; where the number is another one's, that is said. */
function ofAnother(auditCase: AuditCase, text: string): string {
  if (serialsModels(auditCase).length === 0) return text;
  const { join, price: note } = findingTexts.otherModel;
  return join(text, note(serialsLabel(auditCase)));
}

/** The band in words, and how much stands behind it; nothing where there is none. */
export function knownBand({ price: { band, model }, knowledge }: AuditCase): Known[] {
  if (!band || !model) return [];
  const { stated, grade: id, kind, observations, low, high, currency } = band;
  const from = stated?.from[0];
  const grade = knowledge.packs.find((one) => one.id === model.pack)?.grades.find((one) => one.id === id);
  const money = (amount: number): string => moneyText(String(Math.round(amount)), currency);
  const behind = texts.behind(stated ? Math.round(stated.worth) : 0, stated?.date ?? '', observations);
  const known = {
    pack: from?.pack ?? model.pack,
    entry: from?.entry ?? model.id,
    text: `${texts.known[kind](model.label, grade ? say(grade.label) : '', money(low), money(high))} ${behind}`,
    source: from?.source ?? null,
  };
  return [known];
}

function factorKnown({ pack, entry, source }: AuditCase['price']['factors'][number]): Known {
  return { pack, entry: entry.id, text: texts.factor(say(entry.label), String(entry.times)), source };
}
