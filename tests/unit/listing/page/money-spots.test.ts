import { describe, expect, it } from 'vitest';
import { currencyBefore, isCurrency, moneySpots } from '../../../../src/listing/page/money-spots';

const spotsIn = (text: string): string[] =>
  moneySpots(text, 8).map(({ start, end }) => text.slice(start, end).trimEnd());

describe('money in a text', () => {
  it.each<[text: string, spots: string[]]>([
    ['£145 or near offer', ['£145']],
    ['from US$1,200 to A$ 900', ['US$1,200', 'A$ 900']],
    ['1 200 kr. or 95€50', ['1 200 kr.', '95€50']],
    ['kr 500 €', ['kr 500 €']],
    ['EUR 45,- now, 12.– before', ['EUR 45,-', '12.–']],
    ['€12 €15', ['€12', '€15']],
    ['20k€ or 3 pounds', ['20k€', '3 pounds']],
    ['9 Kč, 20 złotych, 30 円', ['9 Kč', '20 złotych', '30 円']],
    ['12 kg of 5 Euroschrauben, model 15K', []],
    ['K20417€ and 3.145.€', []],
    ['25 ft. of belt, 2.5 ft wide, 120 ft', []],
    ['Diesel, Euro 5, for Euro 500 or EUR 5', ['Euro 500', 'EUR 5']],
    ['990 Ft, 12 500 ft', ['990 Ft', '12 500 ft']],
    ['40 KČ, 30 EURO, 20 ZŁOTYCH, 90 РУБ, 5K €', ['40 KČ', '30 EURO', '20 ZŁOTYCH', '90 РУБ', '5K €']],
    ['İ 45 EUR, 45 \u212ar', ['45 EUR']],
  ])('%s', (text, spots) => expect(spotsIn(text)).toEqual(spots));

  it('ends with as many as are asked for', () => expect(moneySpots('£1 £2 £3', 2)).toHaveLength(2));

  it('asks the same about a currency without a number', () => {
    expect(['EUR', 'kr.', 'euros'].map(isCurrency)).toEqual([true, true, true]);
    expect(isCurrency('euro 5')).toBe(false);
    expect(currencyBefore('CHF, negotiable')).toBe('CHF');
    expect(currencyBefore('CHF 40')).toBeNull();
  });
});
