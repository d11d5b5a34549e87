/** Addresses that stand as they would be written by the URL Standard: most of pictures are so. */
const RESOLVED = /^https?:\/\/(?:[a-z\d-]+\.)+[a-z]{2,}\/[\w/-]*(?:\.[a-z\d]+)?$/;

/** The address resolved against a base, or null where it can't be. */
export function resolved(address: string, base: string): string | null {
  if (RESOLVED.test(address) && !address.includes('xn--')) return address;
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
