/** Colours of the pages that are saved, as those of our own pages: dark where the reader's system is, white on paper. */
export const PAGE_COLOURS = `:root{color-scheme:light dark;background:#fbf7ec;color:#1d1b17}a{color:#1c4668}
@media screen and (prefers-color-scheme:dark){:root{background:#1b1c1e;color:#efe8d8}a{color:#a9cdef}}
@media print{:root{background:#fff;color:#000}}`;
