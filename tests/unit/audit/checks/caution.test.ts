import { describe, expect, it } from 'vitest';
import type { Draft } from '../../../../src/listing/types';
import { auditOf, cressiter } from '../support/demo';

const ids = (draft: Draft): string[] =>
  auditOf(draft)
    .findings.filter((finding) => finding.check === 'caution')
    .map((finding) => finding.id.replace('caution:', ''));

describe('safety notes', () => {
  it('some are for any machine', () =>
    expect(ids({ title: 'Old sewing machine', description: '', language: 'en' })).toEqual(['trade/meeting']));

  it.each([
    ['With its motor and lamp.', 'trade/mains-wiring'],
    ['I can post it.', 'trade/posting-iron'],
    ['Deposit by bank transfer.', 'trade/paying-ahead'],
  ])('some are called for by words: %s', (text, id) => {
    expect(ids(cressiter(text))).toContain(id);
    expect(ids(cressiter('Sews well.'))).not.toContain(id);
  });

  it('not by words that are denied', () =>
    expect(ids({ title: 'Sewing machine', description: 'No motor.', language: 'en' })).toEqual(['trade/meeting']));

  it('some by the model, some by its facts', () => {
    expect(ids(cressiter('Sews well.'))).toEqual(
      expect.arrayContaining(['grindlewade-circle/cressiter-weight', 'trade/lifting-iron']),
    );
    const wendelow = ids({ title: 'Grindlewade Wendelow sewing machine', description: '', language: 'en' });
    expect(wendelow).not.toContain('trade/lifting-iron');
    expect(wendelow).not.toContain('grindlewade-circle/cressiter-weight');
  });

  it('the facts in force decide: a light one is not heavy', () => {
    const q41 = (serial: string): Draft => ({ title: 'Ulversholt Q 41 sewing machine', serialText: serial });
    expect(ids(q41('1425000 N'))).not.toContain('trade/lifting-iron');
    expect(ids(q41('1415000 N'))).toContain('trade/lifting-iron');
  });

  it('not by a word that the thing’s own number disproves', () => {
    const q43 = (serialText: string): Draft => ({
      ...{ title: 'Ulversholt Q 43 sewing machine', description: 'All cast iron.', language: 'en' },
      serialText,
    });
    expect(ids(q43('1330415 N'))).not.toContain('trade/lifting-iron');
    // Without the number the name may be what is wrong.
    expect(ids(q43(''))).toContain('trade/lifting-iron');
  });

  it('of what it very likely is, whatever it is called', () => {
    const wendelow: Draft = {
      ...{ title: 'Grindlewade Wendelow sewing machine', description: '', language: 'en' },
      serialText: 'KD 318472',
    };
    // That number is a Cressiter's.
    expect(ids(wendelow)).toEqual(
      expect.arrayContaining(['trade/lifting-iron', 'grindlewade-circle/cressiter-weight']),
    );
    // And that one is a Wendelow's.
    const light = ids(cressiter('It is aluminium and weighs 9.3 kg.', { serialText: 'KD 330715' }));
    expect(light).not.toContain('trade/lifting-iron');
    expect(light).not.toContain('grindlewade-circle/cressiter-weight');
  });

  it('of a maker that no pack knows, where nearly all such machines are so', () =>
    expect(ids({ title: 'Old sewing machine', description: 'With a hand crank.', language: 'en' })).toContain(
      'trade/lifting-iron',
    ));
});
