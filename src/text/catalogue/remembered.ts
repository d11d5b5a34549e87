/** Packs that are gone and still remembered. */
export const rememberedTexts = {
  heading: 'Packs that were here',
  text: 'Their files are gone. Of each Bedplate still remembers which key seals it and how far its editions had come, so that nobody can pass off an old edition as the newest, or one under a key that has been replaced since.',
  means:
    'Forget that only where you mean to begin anew with a pack: the next file of it is taken as the first one ever, an old edition or an old key too, and nothing is said about it. What you have corrected of the pack stays.',
  upTo: (edition: number) => `up to edition ${edition}`,
  sealedBy: (digits: string) => `sealed by ${digits}`,
  forget: 'Forget it',
  forgotten: (name: string) => `${name} is forgotten: the next file of it is taken as the first one ever.`,
  undo: 'Remember it again',
} as const;
