import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { BadInput } from '../../../../src/cli/bad-input';
import { identifyCommand } from '../../../../src/cli/commands/identify';
import { ROOT } from '../../../steps/root';

const club = join(ROOT, 'fixtures/packs/grindlewade-circle.json');
const platen = join(ROOT, 'fixtures/packs/platen-circle.json');
const json = (...argv: string[]) => JSON.parse(identifyCommand([...argv, '--json']));

describe('the identify command', () => {
  it('answers as the audit does, of a machine on the table', () => {
    expect(json('--seen', 'mechanism=vibrating-shuttle')).toMatchObject({
      schema: 1,
      kind: 'item',
      claimedModel: null,
    });
    expect(json('--seen', 'frame=aluminium').likely[0].for).toEqual(
      expect.arrayContaining([expect.objectContaining({ text: expect.stringContaining('Frame: you saw aluminium.') })]),
    );
  });
  it('asks the clubs’ tables for the number', () => {
    const answer = json('--pack', club, '--serial', 'KD 318472');
    expect(answer.serial.verdict).toBe('fits');
    expect(answer.likely[0].label).toBe('Grindlewade Cressiter');
  });
  it('takes what the number on the machine reads', () => {
    const reads = (...seen: string[]) => json('--pack', club, '--serial', 'KD 318472', ...seen).likely[0];
    expect(reads('--seen', 'serial=KD 318472').probability).toBeGreaterThan(reads().probability);
    expect(reads('--seen', 'serial=other').label).not.toBe('Grindlewade Cressiter');
  });
  it('takes yes and no, and “?” for what can’t be told', () => {
    const asked = (...seen: string[]) =>
      json(...seen.flatMap((one) => ['--seen', one])).nextEvidence.map((one: { attribute: string }) => one.attribute);
    expect(asked()).toContain('trade/stitch');
    expect(asked('stitch=?')).not.toContain('trade/stitch');
    expect(json('--seen', 'drop-feed=yes').likely).not.toEqual(json('--seen', 'trade/drop-feed=no').likely);
  });
  it('another kind of thing is asked for in its own words', () =>
    expect(json('--pack', platen, '--what', 'typewriter').packs.map((pack: { id: string }) => pack.id)).toEqual([
      'platen-circle',
    ]));
  it('lays it out: what it is, why, what follows, what would settle it', () => {
    const text = identifyCommand(['--seen', 'mechanism=vibrating-shuttle']);
    for (const heading of ['Most likely', 'What is known of it: ', 'What would settle it'])
      expect(text).toMatch(new RegExp(`^${heading}`, 'm'));
    expect(text).toMatch(/for it: {5}/);
    expect(identifyCommand(['--help'])).toContain('--seen');
  });
  it.each([
    [['--seen', 'frame'], /not of the form/],
    [['--seen', 'colour=red'], /no feature "colour"/],
    [['--seen', 'frame=tin'], /no value "tin" of frame/],
    [['--seen', 'drop-feed=perhaps'], /yes, no, \?/],
    [['--seen', 'weight=12'], /measured/],
    [['--what', 'oak table'], /no pack here speaks of "oak table"/],
    [['a.html'], /belongs to no option/],
    [['--as-of', 'today'], /is not a day/],
  ])('%j is bad input, told in one line', (argv, message) => {
    expect(() => identifyCommand(argv)).toThrow(BadInput);
    expect(() => identifyCommand(argv)).toThrow(message);
  });
});
