// What the tag of an element says of it and of the text inside it, as flags added up.

/** A line ends before and after it. */
export const BLOCK = 1;
/** Nothing inside it is text that a person sees. */
export const SILENT = 2;
/** Shows an icon where it is empty. */
export const ICON = 4;
/** In a line, set by pages beside another of its kind with nothing between: each is a text of its own. */
export const INLINE = 8;
/** Never an item of its own in a row of items. */
export const NO_ITEM = 16;
/** Says something to machines, in the head. */
export const HEAD = 32;
/** Strikes out what it holds; shows it bold. */
export const STRIKING = 64;
export const BOLDENING = 128;
/** Shows a picture. */
export const PICTURE = 256;
export const HEADING = 512;
/** May have a shadow tree, by the DOM standard (section "attachShadow"). */
export const HOST = 1024;
/** An element of the page's own making. */
export const CUSTOM = 2048;
/** One of those that the walk treats each in its own way. */
export const PARTICULAR = 4096;

const TAGS: [kind: number, tags: string][] = [
  [
    BLOCK,
    'address article aside blockquote body caption center dd details dialog dir div dl dt fieldset figcaption figure footer form h1 h2 h3 h4 h5 h6 header hgroup hr html legend li main menu nav ol p pre search section summary table tbody td tfoot th thead tr ul button',
  ],
  [
    SILENT,
    'br img meta title link base style noscript template svg math canvas iframe object embed video audio select textarea datalist noembed noframes',
  ],
  [ICON, 'i span em b img'],
  [INLINE, 'span a em i b strong small data time abbr bdi mark font label u'],
  [NO_ITEM, 'br script style template svg use path sup sub wbr'],
  [HEAD, 'meta title link base'],
  [STRIKING, 'del s strike'],
  [BOLDENING, 'b strong big'],
  [PICTURE, 'img picture figure'],
  [HEADING, 'h1 h2 h3 h4 h5 h6'],
  [HOST, 'article aside blockquote body div footer h1 h2 h3 h4 h5 h6 header main nav p section span'],
  [PARTICULAR, 'script dialog button sup font pre a svg br time img iframe template slot'],
];

const kinds = new Map<string, number>();
for (const [kind, tags] of TAGS) for (const tag of tags.split(' ')) kinds.set(tag, (kinds.get(tag) ?? 0) | kind);

export const kindOf = (tag: string): number => kinds.get(tag) ?? (tag.includes('-') ? BLOCK | HOST | CUSTOM : 0);
