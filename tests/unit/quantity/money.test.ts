import { describe, expect, it } from 'vitest';
import { findMoney, type MoneyOptions, readMoney } from '../../../src/quantity/money';

describe('readMoney: amounts and currencies', () => {
  it.each<[text: string, amount: string, currency: string | null, options?: MoneyOptions]>([
    ['£1,340 ono', '1340', 'GBP'],
    ['1.340,00 €', '1340.00', 'EUR'],
    ['US$ 450', '450', 'USD'],
    ['US $450', '450', 'USD'],
    ['£1.2k', '1200', 'GBP'],
    ['1,5k€', '1500', 'EUR'],
    ['EUR15.99', '15.99', 'EUR'],
    ['20,-', '20', null],
    ['20,-', '20', 'EUR', { currency: 'EUR' }],
    ["CHF 1'200.–", '1200', 'CHF'],
    ['1 340,50 kr', '1340.50', null],
    ['1 340,50 kr', '1340.50', 'SEK', { currency: 'SEK' }],
    ['1\u202f340,50\u00a0€', '1340.50', 'EUR'],
    ['$24.990', '24990', null],
    ['$24.990', '24990', 'CLP', { currency: 'CLP' }],
    ['$ 24.990', '24990', 'COP', { currency: 'COP' }],
    ['$450', '450', 'AUD', { currency: 'AUD' }],
    ['$450', '450', null, { currency: 'GBP' }],
    ['$450 CAD', '450', 'CAD'],
    ['A$450', '450', 'AUD'],
    ['450 US dollars', '450', 'USD'],
    ['450 dollars', '450', null],
    ['Rs. 1,20,000', '120000', null],
    ['Rs. 1,20,000', '120000', 'INR', { currency: 'INR' }],
    ['₹1,20,000', '120000', 'INR'],
    ['450 VB', '450', null],
    ['450 VB', '450', 'EUR', { currency: 'EUR' }],
    ['2 500 zł', '2500', 'PLN'],
    ['¥12000', '12000', 'JPY'],
    ['¥120.50', '120.50', 'CNY'],
    ['￥１,３４０', '1340', 'JPY'],
    ['GBP 260.00', '260.00', 'GBP'],
    ['260 pounds', '260', 'GBP'],
    ['260 quid', '260', 'GBP'],
    ['Preis: 120 Euro VHB', '120', 'EUR'],
    ['asking 450', '450', null],
    ['450', '450', null],
    ['450', '450', 'GBP', { currency: 'GBP' }],
    ['1954', '1954', null],
    ['£.99', '0.99', 'GBP'],
    ['1.340.00 €', '1340.00', 'EUR'],
    ['450:-', '450', null],
    ['Rs. 500/-', '500', null],
    ['R1 200', '1200', 'ZAR', { currency: 'ZAR' }],
    ['Fr. 120.-', '120', 'CHF', { currency: 'CHF' }],
    ['KWD 1.250', '1.250', 'KWD'],
    ['1.250 KWD', '1250', 'KWD', { language: 'de' }],
    ['5,00 $US', '5.00', 'USD'],
    ['1.2 k€', '1200', 'EUR'],
    ['45€VB', '45', 'EUR'],
    ['45 $ US', '45', 'USD'],
    ['2 tausend Euro', '2000', 'EUR'],
    ['45 € Versand möglich', '45', 'EUR'],
    ['Versand 6,99 EUR, Preis 45 EUR', '45', 'EUR'],
    ['was £60 now £40', '40', 'GBP'],
    ['£60, now £40', '40', 'GBP'],
    ['£40 + £5 postage', '40', 'GBP'],
    ['RRP £200, £40', '40', 'GBP'],
    ['Class 15, £45', '45', 'GBP'],
    ['Class 15 450 €', '450', 'EUR'],
    ['£45, class 15, made 1954, call 07700 900123', '45', 'GBP'],
    ['zwischen 1947 und 1953, VB 1.250 €', '1250', 'EUR'],
  ])('%j', (text, amount, currency, options = {}) => {
    const read = readMoney(text, options);
    expect({ amount: read?.amount, currency: read?.currency }).toEqual({ amount, currency });
  });
});

describe('readMoney: what is no price', () => {
  it.each([
    '07700 900123',
    '+44 7700 900123',
    '555-123-4567',
    'Made 1954',
    'from 1934 I think',
    '20%',
    'model 450',
    'size 12',
    'class 66',
    '12.05.2020',
    '45 pence',
    '1 lakh',
    'zzgl. Versand 5 €',
    'RRP £200',
    'weighs 21 pounds',
    '21 pounds 8 oz',
    '11 kg',
    'K20417',
    '450 or 500',
    'price on application',
    'VB',
    '',
    '£',
    'free delivery',
    'free arm machine',
  ])('%j', (text) => {
    expect(readMoney(text)).toBeNull();
  });
});

describe('readMoney: nothing to pay', () => {
  it.each(['free', 'Free to collect', 'gratis', 'zu verschenken', 'à donner', 'kostenlos'])('%j', (text) => {
    expect(readMoney(text)).toMatchObject({ amount: '0', currency: null });
  });
  it('is in the currency of the page', () => {
    expect(readMoney('free', { currency: 'EUR' })).toMatchObject({ amount: '0', currency: 'EUR', quote: 'free' });
  });
});

describe('how it is meant', () => {
  it.each([
    ['£40', 'asking'],
    ['from £40', 'from'],
    ['ab 40 €', 'from'],
    ['à partir de 40 €', 'from'],
    ['starting bid £10', 'bid'],
    ['£10 current bid', 'bid'],
    ['Startgebot: 10 €', 'bid'],
    ['Sold for £260', 'sold'],
    ['verkauft für 260 €', 'sold'],
    ['to be sold for £40', 'asking'],
    ['sold as seen £40', 'asking'],
    ['£40-£60', 'from'],
    ['40 bis 60 Euro', 'from'],
    ['between £40 and £60', 'from'],
    ['450-500', 'from'],
  ])('%j is %s', (text, how) => {
    expect(readMoney(text)?.how).toBe(how);
  });

  it('takes the lower end of a range', () => {
    expect(readMoney('£40-£60')).toMatchObject({ amount: '40', quote: '£40-£60' });
    expect(readMoney('£1-2k')).toMatchObject({ amount: '1000', quote: '£1-2k' });
  });

  it.each([
    ['£40 ono', true],
    ['£40 o.n.o.', true],
    ['450 VB', true],
    ['VHB 450 €', true],
    ['£40 or nearest offer', true],
    ['80 € à débattre', true],
    ['£40', false],
    ['Festpreis 450 €', false],
  ])('%j negotiable: %s', (text, negotiable) => {
    expect(readMoney(text)?.negotiable).toBe(negotiable);
  });
});

describe('findMoney', () => {
  const quotes = (text: string, options?: MoneyOptions) => findMoney(text, options).map(({ quote }) => quote);

  it('finds all amounts of a running text where they stand', () => {
    const text = '😀 Was £150, now £120 or 140 €. Postage £15.';
    expect(quotes(text)).toEqual(['£150', '£120', '140 €', '£15']);
    for (const { start, end, quote } of findMoney(text)) expect(text.slice(start, end)).toBe(quote);
  });

  it('reads one place once', () => {
    expect(quotes('$½/–')).toHaveLength(1);
  });

  it('needs a sign, word or code', () => {
    expect(quotes('Made in 1954, class 15, 240 V, 12 bobbins, asking 450')).toEqual([]);
    expect(quotes('asking 450 VB')).toEqual(['450']);
    expect(quotes('ALL 3 bobbins, TOP 10, TRY 2')).toEqual([]);
    expect(quotes('Call 07700 900123 £40')).toEqual(['£40']);
  });

  it('gives each sign to its own number', () => {
    expect(quotes('EUR 40 EUR 50')).toEqual(['EUR 40', 'EUR 50']);
    expect(quotes('40 EUR 50 EUR')).toEqual(['40 EUR', '50 EUR']);
    expect(quotes('€40 €50')).toEqual(['€40', '€50']);
    expect(quotes('40€ 50€')).toEqual(['40€', '50€']);
  });

  it('tells pounds of money from pounds of weight', () => {
    expect(quotes('It weighs 21 pounds; asking 30 pounds')).toEqual(['30 pounds']);
    expect(quotes('21 pounds 8 ounces')).toEqual([]);
  });
});
