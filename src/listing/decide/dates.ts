import { fold } from '../../text/fold';

/** First letters of the months, folded: English; German; French; Dutch; Italian; Spanish; Portuguese; Nordic; Polish; Czech; Finnish. */
const MONTHS: string[][] = [
  ['jan', 'gen', 'ene', 'sty', 'led', 'tammi'],
  ['feb', 'fev', 'lut', 'uno', 'helmi'],
  ['mar', 'maerz', 'mrt', 'maart', 'bre', 'maalis'],
  ['apr', 'avr', 'abr', 'kwi', 'dub', 'huhti'],
  ['may', 'mai', 'mei', 'mag', 'maj', 'kve', 'touko'],
  ['jun', 'juin', 'giu', 'cze', 'cerven', 'kesa'],
  ['jul', 'juil', 'lug', 'lip', 'cervenec', 'cervenc', 'heina'],
  ['aug', 'aou', 'ago', 'sie', 'srp', 'elo'],
  ['sep', 'set', 'wrz', 'zar', 'syys'],
  ['oct', 'okt', 'ott', 'out', 'paz', 'rij', 'loka'],
  ['nov', 'lis', 'marras'],
  ['dec', 'dez', 'dic', 'gru', 'pros', 'joulu'],
];

const monthOf = (word: string): number => {
  let best = 0;
  let length = 0;
  for (const [index, beginnings] of MONTHS.entries()) {
    for (const beginning of beginnings) {
      if (word.startsWith(beginning) && beginning.length > length) {
        best = index + 1;
        length = beginning.length;
      }
    }
  }
  return best;
};

/** The day as an ISO 8601 date, or null where there is no such day. */
function iso(year: number, month: number, day: number): string | null {
  const full = year < 100 ? 2000 + year : year;
  if (full < 1990 || full > 2200 || month < 1 || month > 12 || day < 1) return null;
  if (day > new Date(Date.UTC(full, month, 0)).getUTCDate()) return null;
  return `${full}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
}

/**
 * The date that a text states, as ISO 8601 ("2024-03-12"), or null: for "3 days ago" today's date would be needed, and
 * "03/04/2024" is two dates where the language does not decide. `language`: a BCP 47 tag or null.
 */
export function readDate(text: string, language: string | null): string | null {
  const folded = fold(text.slice(0, 200)).text;
  const written = /(?<!\d)(\d{4})-(\d{1,2})-(\d{1,2})(?!\d)/.exec(folded);
  if (written) return iso(Number(written[1]), Number(written[2]), Number(written[3]));

  const dayFirst =
    /(?<!\d)(\d{1,2})(?:st|nd|rd|th|er|\.|o)?[ ./-]*(?:of |de )?([a-z]{3,12})\.?,?[ ./-]*(?:de )?(\d{4}|'\d{2})(?!\d)/.exec(
      folded,
    );
  if (dayFirst && monthOf(dayFirst[2]!))
    return iso(Number(dayFirst[3]!.replace("'", '')), monthOf(dayFirst[2]!), Number(dayFirst[1]));
  const monthFirst = /(?:^|[^a-z])([a-z]{3,9})\.? (\d{1,2})(?:st|nd|rd|th)?,? +(\d{4})(?!\d)/.exec(folded);
  if (monthFirst && monthOf(monthFirst[1]!))
    return iso(Number(monthFirst[3]), monthOf(monthFirst[1]!), Number(monthFirst[2]));

  // The form of programs: "Mon Nov 9 21:14:55 GMT 2026".
  const stamped = /(?:^|[^a-z])([a-z]{3}) (\d{1,2}) \d\d:\d\d(?::\d\d)? (?:[a-z]{2,5} )?(\d{4})(?!\d)/.exec(folded);
  if (stamped && monthOf(stamped[1]!)) return iso(Number(stamped[3]), monthOf(stamped[1]!), Number(stamped[2]));

  const figures = /(?<![\d./-])(\d{1,2})([./-])(\d{1,2})\2(\d{4}|\d{2})(?![\d./-])/.exec(folded);
  if (!figures) return null;
  const [first, second, year] = [Number(figures[1]), Number(figures[3]), Number(figures[4])];
  // Full stops part day from month in every language that uses them.
  if (figures[2] === '.' || first === second) return iso(year, second, first);
  if (first > 12) return iso(year, second, first);
  if (second > 12) return iso(year, first, second);
  if (language === null || language === 'en') return null;
  return /^en-us\b/.test(language) ? iso(year, first, second) : iso(year, second, first);
}
