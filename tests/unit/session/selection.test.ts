import { describe, expect, it } from 'vitest';
import {
  LONGEST_SELECTION,
  selectionAnchor,
  selectionFrom,
  selectionIn,
  selectionKey,
} from '../../../src/session/selection';

const ID = '3f2a7c1e-0000-4000-8000-00000000abcd';

describe('marked words on their way into the enquiry', () => {
  it('are found by the address that was made for them, and by no other', () => {
    expect(selectionIn(selectionAnchor(ID))).toBe(selectionKey(ID));
    for (const anchor of ['', '#enquiry', '#enquiry?x=1', '#prices?selection=ab', '#enquiry?selection=reading/1/2'])
      expect(selectionIn(anchor)).toBeNull();
  });

  it('are taken as a text of bounded length, or not at all', () => {
    expect(selectionFrom('  Rare hand crank. ')).toBe('Rare hand crank.');
    expect(selectionFrom('x'.repeat(LONGEST_SELECTION + 5))).toHaveLength(LONGEST_SELECTION);
    for (const value of [undefined, null, 7, {}, '  ']) expect(selectionFrom(value)).toBeNull();
  });
});
