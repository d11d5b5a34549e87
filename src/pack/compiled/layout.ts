/**
 * Which way of laying a pack out as bytes this is. Bytes of another one are not read but made anew from the pack's text,
 * so it has to change whenever the same pack gives other bytes, or the same bytes mean something else:
 * layout.test.ts fails until it does.
 */
export const LAYOUT = 7;
