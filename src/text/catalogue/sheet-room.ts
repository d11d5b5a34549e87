import { counted, sentenceCase } from './words';

/** The room in which viewing sheets are kept, and the way into it. */
export const sheetRoomTexts = {
  heading: 'Viewing sheets',
  intro:
    'For going to see a machine: what to look at, in order, where it is and what to mind. Print a sheet or save it for your telephone; enter afterwards what you have seen, and the advert’s audit takes it in.',
  loading: 'Opening the sheets…',
  empty:
    'There is no sheet yet. Open an advert, press Bedplate’s button, and choose “Make a viewing sheet” in the panel.',
  private:
    'This is a private window: sheets are kept nowhere and can’t be shown here. Open the advert in an ordinary window.',
  list: 'Your sheets',
  made: (day: string) => `made ${day}`,
  remove: 'Remove',
  removed: (title: string) => `The sheet “${title}” was removed.`,
  undo: 'Put it back',
  gone: 'This sheet is not kept here any more.',
  choose: 'Choose a sheet above.',
  language: 'Language of the sheet',
  print: 'Print it',
  save: 'Save it for a telephone',
  file: 'viewing-sheet.html',
  saved:
    'A file is saved. Send it to your telephone: it opens there without Bedplate and loads nothing from elsewhere.',
  making: 'Putting the sheet together…',
  broken: 'Something went wrong inside Bedplate while it put this sheet together.',
  clear: 'Clear the answer',
  answered: (n: number, of: number) =>
    n === 0
      ? 'What you enter here goes into the answers of this advert.'
      : `${sentenceCase(counted(n, 'answer is', 'answers are'))} entered, of ${counted(of, 'question', 'questions')}. They are in the answers of this advert.`,
  now: 'What it most likely is by now',
  advert: 'To the advert',
  price: (price: string) => `asked: ${price}`,
  outline: 'The place is marked in the drawing.',
} as const;
