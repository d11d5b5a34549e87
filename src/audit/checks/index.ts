import type { AuditCase } from '../case';
import type { CheckId, Finding } from '../types';
import { ageWords } from './age-words';
import { caution } from './caution';
import { claimFact } from './claim-fact';
import { missing } from './missing';
import { nameName } from './name-name';
import { price } from './price';
import { rarity } from './rarity';
import { serialForm } from './serial-form';
import { serialModel } from './serial-model';
import { serialYear } from './serial-year';
import { weight } from './weight';
import { wording } from './wording';

/** Every check with its id, in the order in which findings are shown. */
export const checks: readonly (readonly [CheckId, (auditCase: AuditCase) => Finding[]])[] = [
  ['serial-model', serialModel],
  ['serial-year', serialYear],
  ['serial-form', serialForm],
  ['name-name', nameName],
  ['claim-fact', claimFact],
  ['weight', weight],
  ['rarity', rarity],
  ['age-words', ageWords],
  ['wording', wording],
  ['price', price],
  ['missing', missing],
  ['caution', caution],
];
