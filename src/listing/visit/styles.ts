import { RAISED, STRUCK } from '../types';
import { AS_BLOCK, FOR_SCREENS, HIDDEN, HOLDS_ITEMS, KEEPS_BREAKS } from './flags';
import { onceEach } from './once-each';

// What inline styles and class names say of the text inside an element.

/** Characters that are looked at. */
const NAMES_MOST = 1000;

const TELLING = /display|visib|decor|vert|space/i;
/** "backface-visibility" hides nothing that is turned to the front. */
const HIDING = /display\s*:\s*none|(?<!-)visibility\s*:\s*(?:hidden|collapse)/i;
const STRIKES = /text-decoration[^;]*line-through/i;
const SET_HIGH = /vertical-align\s*:\s*(?:super|text-top|top)/i;
const BLOCK_STYLE = /display\s*:\s*(?:block|flex|grid|list-item|table)/i;
/** Styles, and names in use for them, by which children become items of a row or grid. */
const ITEMS_STYLE = /display\s*:\s*(?:inline-)?(?:flex|grid)/i;
const ITEMS_CLASS = /(?:^|\s)(?:d-)?(?:inline-)?(?:flex|grid)(?:\s|$)/;
const PRE_STYLE = /white-space\s*:\s*(?:pre\b|break-spaces)/i;
const RAISED_CLASS = /\b(?:cents?|frac|fraction|decimals?)\b/i;
/** For readers of screens only: not visible, though no attribute says so. */
const UNSEEN_CLASS = /(?:sr-?only|visually-?hidden|screen-?reader(?:-?text|-?only)?)(?:\s|$)/i;

/** A photograph set behind an element; what is no photograph has another kind of file. */
const DRAWN = /url\([^)]*\.(?:jpe?g|webp|avif)/i;
/** Names of an element that has a picture set behind it. */
const PICTURED = /photo|image|gallery|slide|picture|bild|foto/i;

export function flagsOfStyle(whole: string): number {
  const style = whole.slice(0, NAMES_MOST);
  if (!TELLING.test(style)) return 0;
  return (
    (HIDING.test(style) ? HIDDEN : 0) |
    (STRIKES.test(style) ? STRUCK : 0) |
    (SET_HIGH.test(style) ? RAISED : 0) |
    (PRE_STYLE.test(style) ? KEEPS_BREAKS : 0) |
    (BLOCK_STYLE.test(style) ? AS_BLOCK : 0) |
    (ITEMS_STYLE.test(style) ? HOLDS_ITEMS : 0)
  );
}

/** True where a style sets a photograph behind an element of these names. */
export function isPictured(whole: string, names: string): boolean {
  const style = whole.slice(0, NAMES_MOST);
  return style.includes('url(') && (DRAWN.test(style) || PICTURED.test(names));
}

export const flagsOfClass = onceEach((whole: string): number => {
  const names = whole.slice(0, NAMES_MOST);
  return (
    (UNSEEN_CLASS.test(names) ? HIDDEN | FOR_SCREENS : 0) |
    (RAISED_CLASS.test(names) ? RAISED : 0) |
    (ITEMS_CLASS.test(names) ? HOLDS_ITEMS : 0)
  );
});
