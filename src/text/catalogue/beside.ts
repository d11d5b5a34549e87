import { counted, sentenceCase } from './words';

/** The candidates side by side, with pictures, and the page that is made of it. */
export const besideTexts = {
  heading: 'Side by side',
  inside: (labels: readonly string[]) => labels.join(' · '),
  explain: 'What differs stands first.',
  feature: 'Feature',
  notKnown: 'not said',
  same: (n: number) => `${sentenceCase(counted(n, 'thing is', 'things are'))} the same in all of them`,

  pictures: 'Pictures from the packs',
  picture: (label: string, shows: string) => `${label}: ${shows}`,
  credit: (credit: string, licence: string) => `Picture: ${credit}. Licence: ${licence}.`,
  noPicture: 'The packs have no picture of this one.',

  advert: {
    show: 'Show the advert’s photos here',
    note: 'They are fetched from where the advert has them, as its own page did; whoever keeps them there sees that somebody asked. Nothing is fetched before you press.',
    alt: (n: number, of: number) => (of === 1 ? 'The advert’s photo' : `The advert’s photo ${n} of ${of}`),
    next: 'Next photo',
    before: 'Photo before',
    failed: 'This photo could not be fetched. The site may hand it out to its own pages only.',
  },

  save: 'Save as a page to send',
  saved: 'A file is saved. It holds all of this and loads nothing from elsewhere.',
  /** The page that is saved. */
  page: {
    file: 'side-by-side.html',
    title: (label: string) => `Side by side: ${label}`,
    advert: 'The advert',
    photo: 'The photo that was held beside them',
    photoAlt: 'A photo of the machine in question',
    elsewhere: (n: number) =>
      `The advert’s own ${n === 1 ? 'photo is' : 'photos are'} not in this file: look at ${n === 1 ? 'it' : 'them'} on its page.`,
    chance: (label: string, chance: string) => `${label}: ${chance}`,
    from: 'What is known comes from',
    end: (day: string) =>
      `Put together by Bedplate on ${day} from an advert’s words and what was seen. It is no appraisal: nobody has looked at the machine itself.`,
  },
} as const;
