import { describe, expect, it } from 'vitest';
import { cressiter, findingsOf, found } from '../support/demo';

const check = (text: string): string[] => found('serial-form', cressiter(text));

describe('a serial that no table knows', () => {
  it('may be a slip of the eye for one that they know, which is shown', () => {
    expect(check('Serial number KD3721I8.')).toEqual(['unproved: KD3721I8']);
    const [finding] = findingsOf('serial-form', cressiter('Serial number KD3721I8.'));
    expect(finding?.text).toBe(
      'The serial KD3721I8 is in none of the tables as written. Read as KD372118, it is a number of Grindlewade Cressiter.',
    );
    expect(finding?.known[0]?.text).toContain('KD370001');
  });

  it('has not the form of its maker’s', () =>
    expect(check('Serial number XZ99412345.')).toEqual(['disproved: XZ99412345']));

  it('has not that form, and the advert wonders itself what it is, or doesn’t call it the serial', () => {
    expect(check('Serial number XZ99412345, maybe that of a school.')).toEqual(['unproved: XZ99412345']);
    expect(check('A repairer’s plate, stamped XZ99412345.')).toEqual(['unproved: XZ99412345']);
    expect(check('Serial number XZ99412345 is on the motor.')).toEqual(['unproved: XZ99412345']);
    expect(check('Serial number KD297310 on the other one.')).toEqual(['unproved: KD297310']);
    expect(check('Serial number KD 297310, or possibly KD 297810.')).toEqual(['unproved: KD 297310']);
    expect(check('Serial number KD 29731O.')).toEqual(['unproved: KD 29731O']);
  });

  it('is missing in a table that calls itself complete', () => {
    expect(check('Serial number KD297000.')).toEqual(['disproved: KD297000']);
    expect(check('Serial number KD297000? Hard to read.')[0]).toBe('unproved: KD297000');
    const [finding] = findingsOf('serial-form', cressiter('Serial number KD297000.'));
    // As strong as what is known: the table is complete, so the number was not allotted unless the table is wrong.
    expect(finding?.text).toMatch(/^The serial KD297000 was never allotted, if the table is right/);
    expect(finding?.known[0]).toMatchObject({ entry: 'brindfold-post-war', source: expect.any(String) });
    // And the blocks on either side of it.
    expect(finding?.known.slice(1).map(({ text }) => text)).toEqual([
      expect.stringMatching(/to KD296\d+ were allotted|to KD297000|were allotted to/),
      expect.stringMatching(/were allotted to/),
    ]);
  });

  it.each(['Serial number KD372118.', 'Serial number B 999999.'])(
    'is known, or of a table that may go on: %s',
    (text) => expect(check(text)).toEqual([]),
  );

  it('is nobody’s where no maker is named', () =>
    expect(
      found('serial-form', { title: 'Old sewing machine', description: 'Serial number XZ99412345.', language: 'en' }),
    ).toEqual([]));
});
