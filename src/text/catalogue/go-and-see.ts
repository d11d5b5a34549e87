/** The way to a viewing sheet, in the side panel. */
export const goAndSeeTexts = {
  heading: 'Going to see it?',
  text: 'A sheet for the visit: what to look at, in order, and what to mind. It can be printed.',
  make: 'Make a viewing sheet',
  private: 'In a private window no viewing sheet can be made: it would have to be kept.',
  failed: 'The sheet could not be kept, so it was not made.',
} as const;
