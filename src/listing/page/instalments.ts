import { fitted } from '../../text/fitted';

/** How many, before what each is: "6 cuotas de $4.165", "ou 4 × 287,50 €". */
const TIMES = fitted('u')`(?<![\d.,])(\d{1,2})\s?(?:[x×*]|\p{L})`;
/** What is left over by rounding each part. */
const ROUNDING = 0.005;

/** The number in a written amount, its last two digits behind a mark as hundredths; NaN where there is none. */
function numberIn(amount: string): number {
  const [digits = ''] = /\d[\d.,'’\s]*/.exec(amount) ?? [];
  const bare = digits.replace(/\D/g, '');
  return bare === '' ? Number.NaN : /[.,]\d\d\s*$/.test(digits) ? Number(bare) / 100 : Number(bare);
}

/**
 * Leaves out amounts that are a part of another of them, so and so many times: whatever the page calls instalments.
 * `before`: what stands before the amount in its line.
 */
export function withoutInstalments<Told extends { text: string; before: string }>(told: readonly Told[]): Told[] {
  const numbers = told.map(({ text, before }) => numberIn(text.startsWith(before) ? text.slice(before.length) : text));
  return told.filter(({ before }, index) => {
    const times = Number(TIMES.exec(before)?.[1] ?? 0);
    const whole = times * numbers[index]!;
    return !(times > 1 && numbers.some((other, at) => at !== index && Math.abs(other - whole) <= whole * ROUNDING));
  });
}
