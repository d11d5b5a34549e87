import type { Pickable } from './picks';
import type { FieldNote } from './types';

/** Below this the reader isn't sure of a field for which it found several readings. */
export const UNSURE = 0.7;
/** Below this it isn't sure of a price that it found alone. */
const FAINT = 0.45;

/**
 * Whether somebody should look how a field was read. A description that a page's head merely sums up in other words is
 * none that is in doubt.
 */
export function isDoubtful(field: Pickable, { confidence, alternatives, byUser }: FieldNote): boolean {
  if (byUser) return false;
  const isRivalled = alternatives.some(({ source }) => field !== 'description' || source !== 'meta');
  return isRivalled ? confidence < UNSURE : field === 'price' && confidence < FAINT;
}
