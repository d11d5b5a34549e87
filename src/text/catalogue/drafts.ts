/** What is said of a file of drafts that can't be read. One line each. */
export const draftTexts = {
  notJson: 'The draft is not JSON.',
  none: 'The list holds no draft.',
  tooMany: (most: number) => `The list holds more than ${most} drafts.`,
  notADraft: 'A draft is an object with a title and a description.',
  unknownKey: (key: string) => `Unknown key "${key}".`,
  mustBeText: (key: string) => `"${key}" must be text.`,
  mustBeTexts: (key: string) => `"${key}" must be a list of texts.`,
  inDraft: (number: number, what: string) => `Draft ${number}: ${what}`,
} as const;
