/**
 * What a signature is for. Each purpose has a fixed line of its own before the bytes that are signed, so that a
 * signature for one is worth nothing for another. The number is the format's: another format is another line.
 */
export const CONTEXTS = {
  seal: 'bedplate pack seal 1',
  keyChange: 'bedplate key change 1',
  proposal: 'bedplate proposal 1',
  answer: 'bedplate answer 1',
} as const;

export type Context = keyof typeof CONTEXTS;
