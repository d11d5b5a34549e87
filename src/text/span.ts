/** A stretch of a text, in UTF-16 units, end exclusive. */
export interface Span {
  start: number;
  end: number;
}
