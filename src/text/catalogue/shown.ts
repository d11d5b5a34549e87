/** What stands where a text of a page or pack is shown in part. */
export const shownTexts = {
  cut: (hidden: number) => `… (${hidden} more characters)`,
} as const;
