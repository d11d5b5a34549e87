import { describe, expect, it } from 'vitest';
import { findSerialShapes, findSerials, normaliseSerial } from '../../../src/quantity/serials';

describe('normaliseSerial', () => {
  it.each([
    ['K 20-417', 'K20417'],
    [' k 20–417. ', 'K20417'],
    ['Ｋ２０/417', 'K20417'],
    ['1,234,567', '1234567'],
    ['QX\u00a0123\u200b456', 'QX123456'],
    ['A\ufe0f\u0301 1', 'Á1'],
    ['', ''],
  ])('%j is %j', (written, normal) => {
    expect(normaliseSerial(written)).toBe(normal);
  });
});

describe('findSerials', () => {
  it.each<[text: string, normal: string, quote: string, cue: string]>([
    ['serial no. K 20-417', 'K20417', 'K 20-417', 'serial no'],
    ['serial number: K20417', 'K20417', 'K20417', 'serial number'],
    ['s/n K20417', 'K20417', 'K20417', 's/n'],
    ['Ser. No. 123456', '123456', '123456', 'Ser. No'],
    ['SN: 20417', '20417', '20417', 'SN'],
    ['The number on the bed plate is K20417', 'K20417', 'K20417', 'number on the bed plate'],
    ['Serial (stamped under the bed) K20417', 'K20417', 'K20417', 'Serial'],
    ['Serial:\nK20417', 'K20417', 'K20417', 'Serial'],
    ['Serial # QX123456A', 'QX123456A', 'QX123456A', 'Serial #'],
    ['full working order. Serial number QX 123 456 dates it to 1953', 'QX123456', 'QX 123 456', 'Serial number'],
    ['Seriennummer 123 456', '123456', '123 456', 'Seriennummer'],
    ['Fabriknummer: 20417', '20417', '20417', 'Fabriknummer'],
    ['Maschinennummer K-20417', 'K20417', 'K-20417', 'Maschinennummer'],
    ['Nr. eingeprägt: K20417', 'K20417', 'K20417', 'Nr. eingeprägt'],
    ['eingeprägte Nr. K20417', 'K20417', 'K20417', 'eingeprägte Nr'],
    ['Masch.-Nr. 20417', '20417', '20417', 'Masch.-Nr'],
    ['Serial No.\nK20417', 'K20417', 'K20417', 'Serial No'],
    ['Serial number (on the right of the bed) is K20417', 'K20417', 'K20417', 'Serial number'],
    ['the serial number of this machine is 0123456', '0123456', '0123456', 'serial number'],
    ['serial looks like K2O417', 'K2O417', 'K2O417', 'serial'],
    ['numéro de série K20417', 'K20417', 'K20417', 'numéro de série'],
    ['N° de série : K 20417', 'K20417', 'K 20417', 'N° de série'],
    ['serial k 20417', 'K20417', 'k 20417', 'serial'],
    ['serial K2O417', 'K2O417', 'K2O417', 'serial'],
    ['serial 20417 450 €', '20417', '20417', 'serial'],
    ['Serial K20417?', 'K20417', 'K20417', 'Serial'],
  ])('%j', (text, normal, quote, cue) => {
    expect(findSerials(text)).toMatchObject([{ normal, quote, cue }]);
  });

  it.each([
    'Serial no. starts with K20',
    'serial number begins K20417',
    'serial K20xxx',
    'serial K20***',
    'serial number K20-xxx',
    'serial K20...',
    'serial number unknown',
    'serial number is 7 digits',
    'No serial. Tel 01234 567890',
    'motor serial number 12345',
    'serial number in photo 12345',
    'part number on the plate 123456',
    'Patent no. 123456',
    'model no. 123456',
    'item no 123456, lot no 123456',
    'call 07700 900123',
    'K20417',
  ])('%j names none', (text) => {
    expect(findSerials(text)).toEqual([]);
  });

  it('reads a list of them', () => {
    expect(findSerials('serial numbers K20417 and K20418, 450 €').map(({ normal }) => normal)).toEqual([
      'K20417',
      'K20418',
    ]);
    expect(findSerials('serial K20417, 12000 stitches').map(({ normal }) => normal)).toEqual(['K20417']);
  });
});

describe('findSerialShapes', () => {
  it.each([
    ['my K20417 machine', ['K20417']],
    ['AB 123456 on the bed', ['AB123456']],
    ['K-20417A', ['K20417A']],
    ['number 204175', ['204175']],
    ['in 1954 for £1200 or 1340,50 €', []],
    ['call 07700 900123 or 555-123-4567', []],
    ['class 15000, part no 123456, model 12345', []],
    ['12345 g, 12345%, 1500 stitches, 220-240V', []],
    ['12.05.2020, 1947-49, c1938, 1940s', []],
    ['MADE IN 1954', []],
    ['K20417xx', []],
  ])('%j', (text, normals) => {
    expect(findSerialShapes(text).map(({ normal }) => normal)).toEqual(normals);
  });

  it('gives no cue and exact quotes', () => {
    expect(findSerialShapes('😀 K 20417')).toEqual([
      { start: 3, end: 10, quote: 'K 20417', normal: 'K20417', cue: null },
    ]);
  });
});
