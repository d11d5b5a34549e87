/** From whom a pack is, and how far that is proved. */
export const originTexts = {
  shipped: 'came with Bedplate',
  sealedBy: (fingerprint: string) => `sealed by ${fingerprint}`,
  unsealed: 'unsealed',
  sealedExplain:
    'Sealed: nobody changed this pack since the holder of that key sealed it. Whose key it is, the club has to tell you: compare the digits with those it has published.',
  unsealedExplain: 'Unsealed: nothing proves who wrote this pack, or that nobody changed it since.',
  demo: 'invented, for demonstration',
} as const;
