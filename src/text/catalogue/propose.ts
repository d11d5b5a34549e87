/** What is said of proposals where nobody has said it in their own words. */
export const proposeTexts = {
  anotherTaken: 'Another proposal for the same place was taken.',
} as const;
