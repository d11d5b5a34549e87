// What elements, styles and class names say of the text inside them.

const words = (text: string) => new Set(text.split(' '));
export const BLOCKS = words(
  'address article aside blockquote body caption center dd details dialog dir div dl dt fieldset figcaption figure footer form h1 h2 h3 h4 h5 h6 header hgroup hr html legend li main menu nav ol p pre search section summary table tbody td tfoot th thead tr ul button',
);
export const SILENT = words(
  'br img meta title link base style noscript template svg math canvas iframe object embed video audio select textarea datalist noembed noframes noscript',
);
/** Elements that show an icon where they are empty. */
export const ICONS = words('i span em b img');
/** Elements in a line that a page sets beside each other with nothing between: each is a text of its own. */
export const INLINE = words('span a em i b strong small data time abbr bdi mark font label u');
/** Never an item of its own in a row of items. */
export const NOT_ITEMS = words('br script style template svg use path sup sub wbr');
export const HEADS = words('meta title link base');
export const STRIKING = words('del s strike');

export const HIDING = /(?:display\s*:\s*none|visibility\s*:\s*(?:hidden|collapse))/i;
export const STRIKES = /text-decoration[^;]*line-through/i;
export const SET_HIGH = /vertical-align\s*:\s*(?:super|text-top|top)/i;
export const BLOCK_STYLE = /display\s*:\s*(?:block|flex|grid|list-item|table)/i;
/** Styles, and names in use for them, by which children become items of a row or grid. */
export const ITEMS_STYLE = /display\s*:\s*(?:inline-)?(?:flex|grid)/i;
export const ITEMS_CLASS = /(?:^|\s)(?:d-)?(?:inline-)?(?:flex|grid)(?:\s|$)/;
export const PRE_STYLE = /white-space\s*:\s*(?:pre\b|pre-|break-spaces)/i;
export const RAISED_CLASS = /\b(?:cents?|frac|fraction|decimals?)\b/i;
/** For readers of screens only: not visible, though no attribute says so. */
export const UNSEEN_CLASS = /(?:^|\s)\S*(?:sr-?only|visually-?hidden|screen-?reader(?:-?text|-?only)?)(?:\s|$)/i;
/** A dialog that waits: hidden from everybody as long as aria-hidden says so. Other aria-hidden text is seen. */
export const WAITING = /\b(?:dialog|modal|popup|drawer|tooltip|menu)\b/i;

/** Elements that show a picture, and names of those that have one set behind them. */
export const PICTURES = words('img picture figure');
/** A photograph set behind an element; what is no photograph has another kind of file. */
export const DRAWN = /url\([^)]*\.(?:jpe?g|webp|avif)/i;
export const PICTURED = /photo|image|gallery|slide|picture|bild|foto/i;
