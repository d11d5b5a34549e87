import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { audit } from '../../../src/audit/audit';
import type { Audit } from '../../../src/audit/types';
import { compile, parsePack } from '../../../src/engine';
import { listingByHand } from '../../../src/listing/by-hand';
import { demo } from '../audit/support/demo';

const shipped = new URL('../../../src/pack/shipped/trade.json', import.meta.url);
const trade = compile([parsePack(readFileSync(shipped, 'utf8')).pack!]);
const asOf = '2026-11-25';
const table = (described = {}, answers = {}, knowledge = trade): Audit =>
  audit(listingByHand({ what: 'sewing machine', ...described }), knowledge, { asOf, answers });

describe('a machine on the table', () => {
  it('is a thing, with nothing asked for it', () => {
    const answer = table();
    expect(answer.kind).toBe('item');
    expect(answer.packs.map((pack) => pack.id)).toEqual(['trade']);
    expect(answer.listing.price).toBeNull();
  });
  it('its number is a serial', () => expect(table({ serial: 'KD 330-000' }, {}, demo).serial.normal).toBe('KD330000'));

  it('a blank start: kinds of it, and first the bobbin’s place or the drive is asked for', () => {
    const { likely, nextEvidence } = table();
    expect(likely.every((one) => one.kind !== 'model')).toBe(true);
    expect(['slide-plate', 'handwheel']).toContain(nextEvidence[0]?.place);
    expect(nextEvidence.length).toBeLessThanOrEqual(5);
    for (const one of nextEvidence) expect(one.options.length).toBeGreaterThan(1);
  });
  it('each answer makes it surer, and isn’t asked for again', () => {
    const answers: Record<string, string | boolean | null> = {};
    let last = 0;
    for (let round = 0; round < 4; round++) {
      const { likely, nextEvidence } = table({}, answers);
      const wanted = demo.models.get('trade/three-quarter-iron-vibrating')!;
      const share = likely.find((one) => one.model === wanted.ref)?.probability ?? 0;
      expect(share).toBeGreaterThanOrEqual(last);
      last = share;
      const next = nextEvidence[0];
      if (!next) break;
      expect(answers).not.toHaveProperty([next.attribute]);
      const fact = wanted.facts.get(next.attribute)?.[0];
      answers[next.attribute] =
        fact?.allowed.kind === 'values'
          ? [...fact.allowed.values][0]!
          : fact?.allowed.kind === 'yes-no'
            ? fact.allowed.value
            : null;
    }
    expect(last).toBeGreaterThan(0.7);
  });
  it('what follows once the kind is known is told, with its source', () => {
    const first = table({}, { 'trade/mechanism': 'vibrating-shuttle', 'trade/size': 'three-quarter' }).likely[0];
    expect(first?.kind).toBe('type');
    expect(first?.follows.find((one) => one.attribute === 'trade/bobbin')).toMatchObject({
      text: 'long bobbin',
      usually: false,
    });
  });
});
