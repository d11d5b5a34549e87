/** The address resolved against a base, or null where it can't be. */
export function resolved(address: string, base: string): string | null {
  try {
    return new URL(address, base).href;
  } catch {
    return null;
  }
}

/** An absolute address of the web (or of a saved page's folder), or null. */
export function absolute(address: string, base: string): string | null {
  const found = resolved(address.trim(), base);
  return found && /^(?:https?|file):/.test(found) ? found : null;
}
