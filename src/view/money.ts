/**
 * An amount in words of the interface: "€1,340", "£12.50", "1340" where the currency is not known.
 * @param amount a decimal string or a number
 * @param currency ISO 4217, or null
 */
export function moneyText(amount: string | number, currency: string | null): string {
  const digits = { minimumFractionDigits: 0, maximumFractionDigits: 2 };
  const value = Number(amount);
  if (!Number.isFinite(value)) return String(amount);
  // Half a price reads as a slip of the pen: either no decimals or as many as the currency has.
  const style = Number.isInteger(value) ? { maximumFractionDigits: 0 } : {};
  try {
    if (currency) return new Intl.NumberFormat('en', { style: 'currency', currency, ...style }).format(value);
  } catch {
    // Not a code that the browser knows: the amount is shown with the code as written.
    return `${new Intl.NumberFormat('en', digits).format(value)} ${currency}`;
  }
  return new Intl.NumberFormat('en', digits).format(value);
}

/** A band's edge: no more digits than such an estimate carries. */
export function roundMoney(amount: number, currency: string): string {
  const step = amount >= 1000 ? 10 : amount >= 100 ? 5 : 1;
  return moneyText(Math.round(amount / step) * step, currency);
}
