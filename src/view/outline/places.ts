import type { Outline } from '../../pack/schema/about';

/** Where a named place is on a drawing: a ring around it, in the drawing's own units (320 by 200). */
export interface Ring {
  x: number;
  y: number;
  /** Half its width and height. */
  rx: number;
  ry: number;
  /** From which side the arrow comes, where the drawing leaves room: degrees clockwise, 0 from the right, 90 from below. */
  from: number;
}

const ring = (x: number, y: number, rx: number, ry: number, from: number): Ring => ({ x, y, rx, ry, from });

const SEWING_MACHINE = {
  arm: ring(160, 58, 66, 24, 90),
  bed: ring(160, 160, 142, 27, -90),
  'bed-extension': ring(42, 160, 32, 26, -100),
  faceplate: ring(80, 80, 22, 34, 180),
  'feed-dogs': ring(84, 150, 14, 8, -20),
  handwheel: ring(283, 62, 18, 36, 90),
  motor: ring(272, 116, 20, 20, 40),
  'needle-bar': ring(76, 124, 11, 18, 180),
  'needle-plate': ring(84, 150, 25, 11, -25),
  'pillar-foot': ring(244, 146, 32, 16, -150),
  'presser-bar': ring(91, 130, 12, 22, 0),
  'slide-plate': ring(42, 151, 27, 14, -105),
  underside: ring(160, 182, 142, 13, -90),
} as const;

const TYPEWRITER = {
  body: ring(160, 118, 140, 70, -90),
  carriage: ring(160, 46, 144, 20, 90),
  keyboard: ring(160, 142, 112, 36, -90),
  spools: ring(160, 82, 90, 24, -90),
  'type-basket': ring(160, 90, 42, 26, 60),
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
