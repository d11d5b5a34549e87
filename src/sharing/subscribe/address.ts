/** Longer than any address that a person copies. UTF-16 units. */
const LONGEST = 2_000;

export type AddressProblem = 'not-an-address' | 'not-https' | 'carries-a-name';

/** Where a pack is published, and the pattern by which a browser is asked for leave to fetch from there. */
export interface SubscriptionAddress {
  /** Without a fragment, which never leaves the browser anyway. */
  address: string;
  host: string;
  /** A match pattern for the whole host: browsers know no narrower one that all of them take. */
  pattern: string;
}

/**
 * Reads an address as a person types or pastes it. Only https, so that nobody on the way can read which packs are
 * followed or hold one back unseen; and no name or password in it, which would tell the host who asks.
 */
export function subscriptionAddress(text: string): SubscriptionAddress | { problem: AddressProblem } {
  const typed = text.trim();
  if (typed.length > LONGEST) return { problem: 'not-an-address' };
  let url: URL;
  try {
    url = new URL(/^[a-z][a-z0-9+.-]*:/i.test(typed) ? typed : `https://${typed}`);
  } catch {
    return { problem: 'not-an-address' };
  }
  if (url.protocol !== 'https:') return { problem: 'not-https' };
  if (url.username !== '' || url.password !== '') return { problem: 'carries-a-name' };
  // A word that was typed by mistake ("pack") is no host that anybody could publish at.
  if (!/[.:]/.test(url.hostname)) return { problem: 'not-an-address' };
  url.hash = '';
  return { address: url.href, host: url.host, pattern: `https://${url.hostname}/*` };
}
