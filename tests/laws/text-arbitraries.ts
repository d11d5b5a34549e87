import fc from 'fast-check';

/** Any string a page can hold: whole code points and lone surrogates, much punctuation and many kinds of space. */
export const anyText = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 60 }),
  fc.string({ unit: fc.integer({ min: 0, max: 0xffff }).map((unit) => String.fromCharCode(unit)), maxLength: 60 }),
  fc
    .array(
      fc.constantFrom(
        ...'a B é ß ½ ² 0 1 9 K 20 417 . , \' ’ ` " ″ - – — / ( ) £ € $ % # & : ; ! ? … • 😀 👩‍🔧 ✅'.split(' '),
        ' ',
        '\n',
        '\r\n',
        '\u00a0',
        '\u200b',
        '\u00ad',
        '\u0301',
        '\ufe0f',
        '\ud83d',
      ),
      { maxLength: 40 },
    )
    .map((parts) => parts.join('')),
);

/** Words and marks as adverts have them, in any order: what the readers look for, wrongly put together. */
export const advertText = fc
  .array(
    fc.constantFrom(
      ...(
        "£ € $ US$ kr EUR CHF CAD Rs. 1 5 12 45 450 1,340 1.340,00 1954 1947-49 2000 1940s 40s '50s 1/2 ½ 3/8 .99 1.2k 20,- 07700 " +
        '900123 +44 K20417 K 20-417 QX xxx lb lbs oz kg g st stone pounds in " \' ft cm x serial no. number s/n Seriennummer is on bed plate ' +
        'made bought in since from late early circa c. ca. um between and to bis patent manual gebaut gekauft fifties Jahre années century ' +
        "VB ono free gratis from sold bid was now postage class model weighs approx. about - – ( ) , . ; : ? ! % but aber mais que bien l' isn't"
      ).split(' '),
      ' ',
      '\n',
    ),
    { maxLength: 30 },
  )
  .chain((parts) => fc.constantFrom(' ', '', '\u00a0').map((space) => parts.join(space)));

export const text = fc.oneof(anyText, advertText);

const WORDS = [
  'cast',
  'iron',
  'irons',
  'bed',
  'beds',
  "bed's",
  '15',
  '3',
  '4',
  'K',
  'no',
  'Tarn',
  'case',
  'cases',
  's',
  '¾',
];
const JOINTS = [' ', ' ', ' ', '-', '/', '.', '. ', ', ', "'", '', '\n', ' - ', '  '];
/** Words of phrases, and joints that part them or don't: made so that phrases begin alike, nest and end in plurals. */
export const wording = fc
  .array(fc.tuple(fc.constantFrom(...WORDS), fc.constantFrom(...JOINTS)), { minLength: 1, maxLength: 10 })
  .map((parts) => parts.flat().join(''));
