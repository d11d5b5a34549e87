/** "£260", "€1,340.50": an amount for reading, in the interface's manner; the amount stays a decimal string until here. */
export function moneyText(amount: string, currency: string | null): string {
  const number = Number(amount);
  const whole = Number.isInteger(number);
  const digits = { minimumFractionDigits: whole ? 0 : 2, maximumFractionDigits: whole ? 0 : 2 };
  if (currency === null) return number.toLocaleString('en-GB', digits);
  try {
    return number.toLocaleString('en-GB', { style: 'currency', currency, ...digits });
  } catch {
    return `${currency} ${number.toLocaleString('en-GB', digits)}`;
  }
}
