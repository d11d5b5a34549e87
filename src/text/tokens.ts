import type { Span } from './span';

export type TokenKind = 'word' | 'number' | 'mark' | 'break';

/**
 * A token of a text. Letters and digits are separate tokens, so that "12K", "12-K" and "12 K" are the same two;
 * `glued` says that nothing stands between this token and the one before.
 */
export interface Token extends Span {
  kind: TokenKind;
  /** Lower case, without accents, "ß" as "ss", curly quotes straight. */
  folded: string;
  glued: boolean;
}
