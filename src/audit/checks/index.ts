import type { AuditCase } from '../case';
import type { CheckId, Finding } from '../types';
import { ageWords } from './age-words';
import { caution } from './caution';
import { claimClaim } from './claim-claim';
import { claimFact } from './claim-fact';
import { family } from './family';
import { fits } from './fits';
import { lookAlike } from './look-alike';
import { madeWhere } from './made-where';
import { missing } from './missing';
import { nameName } from './name-name';
import { price } from './price';
import { rarity } from './rarity';
import { serialForm } from './serial-form';
import { serialModel } from './serial-model';
import { serialYear } from './serial-year';
import { sourceConflict } from './source-conflict';
import { weight } from './weight';
import { wording } from './wording';

/** Every check with its id, in the order in which findings are shown. */
export const checks: readonly (readonly [CheckId, (auditCase: AuditCase) => Finding[]])[] = [
  ['serial-model', serialModel],
  ['serial-year', serialYear],
  ['serial-form', serialForm],
  ['name-name', nameName],
  ['claim-fact', claimFact],
  ['claim-claim', claimClaim],
  ['family', family],
  ['fits', fits],
  ['made-where', madeWhere],
  ['weight', weight],
  ['rarity', rarity],
  ['age-words', ageWords],
  ['wording', wording],
  ['price', price],
  ['source-conflict', sourceConflict],
  ['look-alike', lookAlike],
  ['missing', missing],
  ['caution', caution],
];
