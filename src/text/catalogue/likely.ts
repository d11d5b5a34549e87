import { counted, number, sentenceCase } from './words';

/** What something most likely is, and the questions that would settle it: beside a page, a draft and a machine. */
export const likelyTexts = {
  heading: 'What it most likely is',
  none: 'None that the packs know',
  kinds: {
    model: '',
    type: 'A kind, not one maker’s model: several makers built such machines.',
    none: 'What is known so far fits no model or kind that the packs know well enough.',
  },
  /** How sure that is, by the probability's place on the scale of the IPCC's guidance note on uncertainty (2010). */
  sure: {
    'virtually-certain': 'This is virtually certain.',
    'very-likely': 'This is very likely.',
    likely: 'This is likely, not certain.',
    even: 'This is about as likely as not.',
    open: '',
  },
  /** The same where it hangs on the number alone. */
  sureByNumber: {
    'virtually-certain':
      'By its number this is virtually certain, if the number is read rightly and the plate is its own. A photo of the number settles that.',
    'very-likely':
      'By its number this is very likely, if the number is read rightly and the plate is its own. A photo of the number settles that.',
    likely:
      'By its number this is likely, if the number is read rightly and the plate is its own. A photo of the number settles that.',
    even: '',
    open: '',
  },
  open: 'It can’t be told yet.',
  openBetween: 'It may be:',
  openMore: (n: number) => `${sentenceCase(counted(n, 'other is', 'others are'))} possible too.`,

  follows: 'What follows if it is',
  followsNow: 'What follows',
  followsAnyway: 'What follows whichever of them it is',
  /** The line under which it is folded. */
  inside: (values: readonly string[], more: number) =>
    [...values, ...(more > 0 ? [`${number(more)} more`] : [])].join(', '),
  usually: (value: string) => `usually ${value}`,
  named: (name: string) => `${name}:`,
  speaksFor: 'What speaks for it',
  speaksAgainst: 'What speaks against it',

  kind: {
    more: 'More about this kind',
    good: 'What it is good for',
    poor: 'What it is not for',
    fits: 'What fits it',
    cautions: 'To mind of this kind',
    mind: 'Words not to take at their face',
  },

  how: 'How do we know?',
  chances: 'How probable each is',
  inHundred: (share: number) =>
    share >= 0.995 ? 'over 99 in 100' : share < 0.01 ? 'under 1 in 100' : `${Math.round(share * 100)} in 100`,
  weights: 'What each thing weighs against the next best, in bits (one bit doubles or halves the odds)',
  bits: (bits: number) => `${bits > 0 ? '+' : bits < 0 ? '−' : ''}${Math.abs(bits).toFixed(1)}`,
  sources: 'Sources of what follows',
  noSource: 'no source named',

  /** The part with the question. */
  settle: {
    heading: 'What would settle it',
    intro: 'Look at the machine, or at a photo of it, and choose. If you can’t see it, say so.',
    ask: (name: string) => `What can you see of this: ${name}?`,
    where: 'Where to look:',
    options: 'Answers',
    cannotTell: 'I can’t tell',
    keys: 'With the keyboard: come here with the Tab key, then press the answer’s number.',
    yes: 'Yes',
    no: 'No',
    done: 'There is no further question that would tell more.',
    seen: 'What you have seen',
    takeBack: 'Take back',
    again: 'Start again',
    notTold: 'can’t tell',
    kept: 'Kept with this advert in this browser.',
    keptDraft: 'Kept with this draft in this browser.',
    keptNot: 'This is a private window: your answers are forgotten when it is closed.',
  },
} as const;
