import { describe, expect, it } from 'vitest';
import { cressiter, findingsOf, found } from '../support/demo';

const check = (text: string): string[] => found('serial-form', cressiter(text));

describe('a serial that no table knows', () => {
  it('may be a slip of the eye for one that they know, which is shown', () => {
    expect(check('Serial number KD3721I8.')).toEqual(['unproved: KD3721I8']);
    const [finding] = findingsOf('serial-form', cressiter('Serial number KD3721I8.'));
    expect(finding?.text).toBe('No known number looks like KD3721I8; it may be a slip for KD372118.');
    expect(finding?.known[0]?.text).toContain('KD370001');
  });

  it('has not the form of its maker’s', () =>
    expect(check('Serial number XZ99412345.')).toEqual(['unproved: XZ99412345']));

  it.each(['Serial number KD372118.', 'Serial number KD297000.'])('has the form: %s', (text) =>
    expect(check(text)).toEqual([]),
  );

  it('is nobody’s where no maker is named', () =>
    expect(
      found('serial-form', { title: 'Old sewing machine', description: 'Serial number XZ99412345.', language: 'en' }),
    ).toEqual([]));
});
