import { describe, expect, it } from 'vitest';
import { storageSeen } from '../../../src/session/begun-anew';

const TODAY = '2026-06-01';

describe('a storage', () => {
  it.each([undefined, null, 'a', {}, { mark: 3, lost: null }, { mark: 'a' }])(
    'of which nothing is remembered (%j) has lost nothing',
    (before) => {
      expect(storageSeen(before, 'a', TODAY)).toEqual({ mark: 'a', lost: null });
    },
  );

  it('with the mark that is remembered has lost nothing, or what it had lost before', () => {
    expect(storageSeen({ mark: 'a', lost: null }, 'a', TODAY)).toEqual({ mark: 'a', lost: null });
    expect(storageSeen({ mark: 'a', lost: '2026-05-01' }, 'a', TODAY)).toEqual({ mark: 'a', lost: '2026-05-01' });
  });

  it('with another mark was begun anew', () => {
    expect(storageSeen({ mark: 'a', lost: null }, 'b', TODAY)).toEqual({ mark: 'b', lost: TODAY });
  });
});
