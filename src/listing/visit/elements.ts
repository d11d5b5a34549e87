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
export const HEADS = words('meta title link base');
export const STRIKING = words('del s strike');

export const HIDING = /(?:display\s*:\s*none|visibility\s*:\s*(?:hidden|collapse))/i;
export const STRIKES = /text-decoration[^;]*line-through/i;
export const SET_HIGH = /vertical-align\s*:\s*(?:super|text-top|top)/i;
export const BLOCK_STYLE = /display\s*:\s*(?:block|flex|grid|list-item|table)/i;
export const PRE_STYLE = /white-space\s*:\s*(?:pre\b|pre-|break-spaces)/i;
export const RAISED_CLASS = /\b(?:cents?|frac|fraction|decimals?)\b/i;
/** For readers of screens only: not visible, though no attribute says so. */
export const UNSEEN_CLASS = /(?:^|\s)(?:sr-only|visually-?hidden|screen-reader(?:-text|-only)?)(?:\s|$)/i;
/** A dialog that waits: hidden from everybody as long as aria-hidden says so. Other aria-hidden text is seen. */
export const WAITING = /\b(?:dialog|modal|popup|drawer|tooltip|menu)\b/i;

/** Elements that show a picture, and names of those that have one set behind them. */
export const PICTURES = words('img picture figure');
export const PICTURED = /photo|image|gallery|slide|picture|bild|foto/i;
