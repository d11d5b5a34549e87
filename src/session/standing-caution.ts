import type { Finding } from '../audit/types';

/** A note that stands beside every such advert: nothing that this one says has called for it. */
export function isStanding({ check, said }: Finding): boolean {
  return check === 'caution' && said.length === 0;
}
