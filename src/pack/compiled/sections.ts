/**
 * Named sections of numbers and texts in one stretch of bytes: the length of the directory, the directory as JSON, then
 * the sections, each at a multiple of eight so that its numbers can be used as they lie there. A section may be made of
 * such stretches in its turn.
 */
export type Directory = Record<string, [kind: Kind, at: number, length: number, base?: number]>;

/** Bytes before the directory. */
export const HEAD = 8;

export const KINDS = { u8: Uint8Array, u16: Uint16Array, u32: Uint32Array, f64: Float64Array };
/** same: a column whose numbers are all its base. */
export type Kind = keyof typeof KINDS | 'same';

/** So many pieces are counted off from one whose place is known. */
export const EACH = 16;
