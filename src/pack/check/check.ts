import type { PackIssue } from '../issues';
import type { Pack } from '../schema/index';
import { checkPrices } from './prices';
import { checkReferences } from './references';
import { checkRuns } from './runs';
import { checkUnique } from './unique';

/** What a schema can't say: ids once each, references that lead somewhere, columns of one length, ends in order. */
export function checkPack(pack: Pack): PackIssue[] {
  return [...checkUnique(pack), ...checkReferences(pack), ...checkRuns(pack), ...checkPrices(pack)];
}
