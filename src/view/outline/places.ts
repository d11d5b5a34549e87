import type { Outline } from '../../pack/schema/about';

/** Where a named place is on a drawing: a ring around it, in the drawing's own units (320 by 200). */
export interface Ring {
  x: number;
  y: number;
  /** Half its width and height. */
  rx: number;
  ry: number;
}

const ring = (x: number, y: number, rx = 15, ry = rx): Ring => ({ x, y, rx, ry });

const SEWING_MACHINE = {
  arm: ring(160, 58, 66, 24),
  bed: ring(160, 160, 142, 27),
  'bed-extension': ring(42, 160, 32, 26),
  faceplate: ring(80, 80, 22, 34),
  'feed-dogs': ring(84, 149, 16, 10),
  handwheel: ring(283, 62, 18, 36),
  motor: ring(272, 116, 20, 20),
  'needle-bar': ring(76, 124, 12, 18),
  'needle-plate': ring(82, 150, 26, 12),
  'pillar-foot': ring(244, 146, 32, 16),
  'presser-bar': ring(90, 130, 12, 22),
  'slide-plate': ring(44, 151, 27, 14),
  underside: ring(160, 182, 142, 13),
} as const;

const TYPEWRITER = {
  body: ring(160, 118, 140, 70),
  carriage: ring(160, 46, 144, 20),
  keyboard: ring(160, 142, 112, 36),
  spools: ring(160, 82, 90, 24),
  'type-basket': ring(160, 90, 42, 26),
} as const;

export type Place = keyof typeof SEWING_MACHINE | keyof typeof TYPEWRITER;

/** The ring around a place, or null where the drawing doesn't show such a place. */
export function ringOf(outline: Outline, place: string | null): Ring | null {
  const places: Record<string, Ring> = outline === 'typewriter' ? TYPEWRITER : SEWING_MACHINE;
  return place !== null && Object.hasOwn(places, place) ? (places[place] ?? null) : null;
}

export function isPlace(place: string | null): place is Place {
  return place !== null && (Object.hasOwn(SEWING_MACHINE, place) || Object.hasOwn(TYPEWRITER, place));
}
