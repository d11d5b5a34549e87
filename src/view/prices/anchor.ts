/** A long label near an edge is written inwards, so that it is never cut off. */
export function anchorAt(at: number): 'start' | 'middle' | 'end' {
  if (at < 40) return 'start';
  return at > 60 ? 'end' : 'middle';
}
