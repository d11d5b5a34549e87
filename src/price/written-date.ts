/**
 * A date as far as it is known, in ISO 8601. "3.4.2025" is the third of April; "3/4/2025" is that in some countries and
 * the fourth of March in others, so that it is none.
 */
export function dateOf(written: string): string | null {
  const iso = /^(\d{4})(?:-(\d{1,2})(?:-(\d{1,2}))?)?$/.exec(written);
  if (iso) return checked(iso[1]!, iso[2], iso[3]);
  const dotted = /^(?:(\d{1,2})\.\s?)?(\d{1,2})\.\s?(\d{4})$/.exec(written);
  if (dotted) return checked(dotted[3]!, dotted[2], dotted[1]);
  const slashed = /^(\d{1,2})\/(\d{1,2})\/(\d{4})$/.exec(written);
  if (!slashed) return null;
  const [one, two] = [Number(slashed[1]), Number(slashed[2])];
  if (one > 12 === two > 12 && one !== two) return null;
  return two > 12 ? checked(slashed[3]!, slashed[1], slashed[2]) : checked(slashed[3]!, slashed[2], slashed[1]);
}

function checked(year: string, month?: string, day?: string): string | null {
  if (Number(year) < 1500) return null;
  if (month === undefined) return year;
  const text = [year, month.padStart(2, '0'), ...(day === undefined ? [] : [day.padStart(2, '0')])].join('-');
  const time = Date.parse(day === undefined ? `${text}-01T00:00:00Z` : `${text}T00:00:00Z`);
  return !Number.isNaN(time) && new Date(time).toISOString().startsWith(text) ? text : null;
}
