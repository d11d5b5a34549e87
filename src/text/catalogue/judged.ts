/** Why a sealed pack that opens doesn't take the place of the one that is known. */
export const judgeTexts = {
  fork: (edition: number, known: number) => ({
    what:
      edition === known
        ? `another pack under the same number, edition ${edition}, than the one that was here`
        : `edition ${edition} goes on from another edition ${known} than the one that was here`,
    expected:
      'one text for each edition. Either its keepers don’t know of each other’s work, or somebody else has the key: ask the club before you trust either',
  }),
  refused: {
    unsealed: { what: 'this file is not sealed', expected: 'a sealed file, as the pack has been here before' },
    'another-pack': { what: 'this is another pack', expected: 'an edition of the same pack' },
    'another-key': {
      what: 'this file is sealed by a key to which nobody has handed the pack over',
      expected: 'the seal of the key that is known, or a change of keys that both keys have signed',
    },
    'not-the-next-key': {
      what: 'the pack was handed over to another key than the one that its keeper had committed to',
      expected: 'the key that an earlier edition named as the next one. Ask the club what happened',
    },
    'next-changed': {
      what: 'the key that is to come next is another one than was said before',
      expected: 'the same next key, until the pack is handed over to it. Ask the club what happened',
    },
  },
} as const;
