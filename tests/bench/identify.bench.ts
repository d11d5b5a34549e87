import { caseOf } from '../../src/audit/audit';
import { likelyOf } from '../../src/audit/likely';
import { readClaims } from '../../src/claims/read';
import { evidenceOf } from '../../src/identify/evidence';
import { identify } from '../../src/identify/identify';
import { nextEvidence } from '../../src/identify/next-evidence';
import { posterior } from '../../src/identify/posterior';
import { readDraft } from '../../src/listing/draft';
import { compile } from '../../src/pack/compile';
import type { Pack } from '../../src/pack/schema/index';
import type { Benchmark } from './benchmark';

const VALUES = ['a', 'b', 'c', 'd'];
const ATTRIBUTES = 20;

/** A pack of so many models in families of ten, with twenty features each and one that it is mistaken for. */
function packOf(models: number): Pack {
  const valueAt = (model: number, attribute: number): string => VALUES[(model * 7 + attribute * (model % 13)) % 4]!;
  return {
    schema: 1,
    about: {
      ...{ id: 'many', title: 'Many', edition: 1, licence: 'none', language: 'en' },
      covers: { thing: 'gadget', words: ['gadget'] },
    },
    attributes: Array.from({ length: ATTRIBUTES }, (_, a) => ({
      ...{ id: `f-${a}`, kind: 'choice' as const, label: `feature ${a}` },
      values: VALUES.map((id) => ({ id, label: id, words: [`feature${a} ${id}`] })),
    })),
    families: Array.from({ length: Math.ceil(models / 10) }, (_, f) => ({ id: `fam-${f}`, label: `F${f}`, names: [] })),
    models: Array.from({ length: models }, (_, m) => ({
      ...{ id: `m-${m}`, label: `Model ${m}`, names: [`Gadget${m} Quorl`], family: `fam-${Math.floor(m / 10)}` },
      ...{ number: 1000 + (m % 97) * 500, mistakenFor: [{ model: `m-${(m + 1) % models}`, rate: 0.1 }] },
      facts: Object.fromEntries(Array.from({ length: ATTRIBUTES }, (_, a) => [`f-${a}`, valueAt(m, a)])),
    })),
    types: [],
  };
}

const MODELS = 5000;
const knowledge = compile([packOf(MODELS)]);
const words = Array.from({ length: 8 }, (_, a) => `feature${a} ${VALUES[a % 4]}.`).join(' ');
const listing = readDraft({ title: 'Gadget17 Quorl gadget', description: words });
const reading = readClaims(listing, knowledge);
const answers = { 'many/f-10': 'b', 'many/f-11': 'c' };
const asked = { reading, serial: null, answers };
const evidence = evidenceOf(asked, knowledge);
const identified = identify(asked, knowledge);
const auditCase = caseOf(listing, knowledge, { asOf: '2026-01-01', answers });

export const benchmarks: Benchmark[] = [
  { name: `identify: ${MODELS} models, 10 pieces of evidence, all anew`, run: () => identify(asked, knowledge) },
  { name: `identify: the posterior alone, ${MODELS} models`, run: () => posterior(evidence) },
  { name: `identify: what to ask next, ${MODELS} models`, run: () => nextEvidence(identified, answers, 5) },
  { name: `identify: what speaks for and against, ${MODELS} models`, run: () => likelyOf(auditCase) },
];
