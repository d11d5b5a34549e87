import { describe, expect, it } from 'vitest';
import { writtenPrice } from '../../../src/price/written-price';

describe('a price as somebody writes it', () => {
  it.each<[string, number, string]>([
    ['£480', 480, 'GBP'],
    ['95 EUR', 95, 'EUR'],
    ['1.340,50 €', 1340.5, 'EUR'],
  ])('“%s”', (written, amount, currency) => expect(writtenPrice(written)).toEqual({ ok: true, amount, currency }));
  it.each([
    ['', 'form'],
    ['a lot', 'form'],
    ['480', 'currency'],
    ['$480', 'currency'],
    ['£0', 'amount'],
    ['-£20', 'amount'],
    ['£-20', 'amount'],
    ['−20 EUR', 'amount'],
    ['£1000000000000', 'amount'],
  ])('“%s” is none: %s', (written, wrong) => expect(writtenPrice(written)).toEqual({ ok: false, wrong }));
});
