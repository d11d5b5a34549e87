import type { Outline } from '../../pack/schema/about';
import { lazily } from '../lazily';

/** The outline of a thing with a place marked, fetched with the first question; until then the room that it will take. */
export const OutlineDrawing = lazily(
  async () => (await import('./OutlineDrawing')).OutlineDrawing,
  <svg class="outline" aria-hidden="true" viewBox="-4 -4 328 208" />,
);

/** A small drawing of one answer, alike. */
export const OptionDrawing = lazily(
  async () => (await import('./OptionDrawing')).OptionDrawing,
  <svg class="option-drawing" aria-hidden="true" viewBox="0 0 96 76" />,
);

/** The attributes whose answers are drawn, known before the drawings are there. */
const DRAWN: Readonly<Record<Outline, readonly string[]>> = {
  'sewing-machine': ['loading', 'bobbin', 'mechanism', 'drive', 'size', 'stitch', 'bed'],
  typewriter: ['strike', 'shift', 'banks', 'build'],
};

/** Whether any answer to a question about this attribute has a drawing of its own. @param attribute its reference or id */
export function hasDrawings(outline: Outline | null, attribute: string): boolean {
  return outline !== null && DRAWN[outline].includes(attribute.slice(attribute.lastIndexOf('/') + 1));
}
