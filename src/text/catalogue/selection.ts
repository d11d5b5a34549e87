/** The browser's own menu over words that are marked on a page. */
export const selectionTexts = {
  menu: 'Ask Bedplate what this is',
} as const;
