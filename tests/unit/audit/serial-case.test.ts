import { describe, expect, it } from 'vitest';
import { auditOf, cressiter } from './support/demo';

const verdict = (serial: string, title = 'Grindlewade Cressiter sewing machine', text = ''): string =>
  auditOf({ title, description: text, serialText: serial, language: 'en' }).serial.verdict;

describe('the verdict on a serial', () => {
  it.each([
    ['KD372118', 'fits'],
    ['kd 372 118', 'fits'],
    ['KD225000', 'fits'],
    ['KD330000', 'another-model'],
    ['KD297000', 'unknown'],
    ['KD3721I8', 'misread'],
    ['KD37211', 'misread'],
    ['KO372118', 'misread'],
    ['K0372118', 'misread'],
    ['KD3D2118', 'misread'],
    ['KX372118', 'bad-form'],
    ['XZ99412345', 'bad-form'],
  ])('%s: %s', (serial, expected) => expect(verdict(serial)).toBe(expected));

  it('another year than the advert says', () => {
    expect(verdict('KD372118', undefined, 'Made in 1960.')).toBe('another-year');
    expect(verdict('KD372118', undefined, 'Bought in 1960.')).toBe('fits');
    expect(verdict('KD372118', undefined, 'Made in 1960. A machine from 1955.')).toBe('fits');
    expect(verdict('KD372118', undefined, 'Made in 1960. A machine from 1961.')).toBe('another-year');
  });

  it('none where none is given', () => expect(auditOf(cressiter('')).serial.verdict).toBe('none'));

  it('a number of no maker that is named is unknown, not wrong', () => {
    expect(verdict('XZ99412345', 'Old sewing machine')).toBe('unknown');
    expect(verdict('KO372118', 'Old sewing machine')).toBe('unknown');
  });

  it('what it may be a slip for is shown with its models', () =>
    expect(auditOf(cressiter('', { serialText: 'KD3721I8' })).serial.suggestions).toContainEqual({
      normal: 'KD372118',
      models: ['grindlewade-circle/cressiter'],
      year: 1955,
    }));

  it('runs that nest are all shown', () => {
    const { runs } = auditOf(cressiter('', { serialText: 'KD386000' })).serial;
    expect(runs.map(({ first }) => first).sort()).toEqual(['KD370001', 'KD385001']);
  });
});

describe('which serial decides', () => {
  const decides = (text: string): string | null => auditOf(cressiter(text)).serial.normal;
  it('one that the tables know before one that they don’t', () =>
    expect(decides('Serial number KD297000. Serial number KD372118.')).toBe('KD372118'));
  it('not one that the advert takes back', () =>
    expect(decides('Serial number KD330000? Rather KD372118.')).toBe('KD372118'));
  it('all are reported', () =>
    expect(auditOf(cressiter('Serial number KD330000. Serial number KD372118.')).serials).toHaveLength(2));
});

describe('digits alone', () => {
  /** 105000 lies in a run of the early Fennicotes. */
  it('prove nothing of a machine whose maker isn’t named', () => {
    const { findings } = auditOf({ title: 'Sewing machine, alloy body', serialText: '105000', language: 'en' });
    expect(findings.filter(({ standing }) => standing === 'disproved')).toEqual([]);
  });
  it('do where it is', () => expect(verdict('105000')).toBe('another-model'));
});
