import { describe, expect, it } from 'vitest';
import { Column } from '../../../../src/pack/serials/column';

const back = (values: number[]) => {
  const column = Column.of(values);
  return Array.from({ length: column.length }, (_, i) => column.at(i));
};

describe('a column', () => {
  it.each([[[]], [[7]], [[0, 0, 0]], [[1, 300, 2]], [[1e14, 1e14 + 255]], [[0, 2 ** 32]], [[5, 999_999_999_999_999]]])(
    'gives back %j',
    (values) => {
      expect(back(values)).toEqual(values);
    },
  );

  it.each([
    [[3, 3, 3], 0],
    [[1900, 2155], 1],
    [[0, 256], 2],
    [[0, 65_536], 4],
    [[0, 2 ** 32], 8],
  ])('keeps each of %j in %i bytes', (values, bytes) => {
    expect(Column.of(values).data?.BYTES_PER_ELEMENT ?? 0).toBe(bytes);
  });
});
