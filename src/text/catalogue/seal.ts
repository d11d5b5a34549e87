/** What is said of seals: why a sealed file doesn't open, and why one that opens isn't taken. */
export const sealTexts = {
  problems: {
    'seal-form': { what: 'the first line is no seal', expected: 'a seal of this format (version 1)' },
    signature: { what: 'the seal does not fit what follows it', expected: 'the very bytes that the keeper sealed' },
    'not-canonical': { what: 'what follows the seal is not in canonical form', expected: 'canonical JSON (RFC 8785)' },
    'key-history': {
      what: 'the key that sealed it is not the key that founded the pack, and was not handed the pack over by it',
      expected: 'a seal by the key whose fingerprint stands in the pack’s id, or signed handovers from it',
    },
  },
  iJson: {
    'key-twice': (key: string) => `the key ${key} stands twice in one object`,
    'half-character': 'a text holds half a character (a lone surrogate)',
    noncharacter: 'a text holds a character that Unicode keeps for no use',
    at: (what: string, line: number, column: number) => `${what}, at line ${line}, column ${column}`,
    expected: 'I-JSON (RFC 7493)',
  },
  unsealedId: (id: string) => ({
    what: `"${id}" is a sealed pack’s id, and this file is not sealed`,
    expected: 'the sealed file, or an id without a key’s fingerprint',
  }),
} as const;
