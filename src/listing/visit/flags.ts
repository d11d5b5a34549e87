// What the walk knows of a stretch of text beside what it tells of it (STRUCK and the like, in the types).

/** Line breaks of the source are seen. */
export const KEEPS_BREAKS = 32;
export const HIDDEN = 64;
/** Its children are set as items of a row or grid, each by itself. */
export const HOLDS_ITEMS = 128;
/** Hidden, but read out. */
export const FOR_SCREENS = 256;
/** Set as a block by its style; not true of what is inside. */
export const AS_BLOCK = 512;
