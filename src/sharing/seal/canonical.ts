import canonicalize from 'canonicalize';

/** JSON in the one form that RFC 8785 gives it; undefined for what JSON can't say. */
export function canonicalJson(value: unknown): string | undefined {
  return canonicalize(value);
}

/**
 * Is the text byte for byte the canonical form of what it parses to? That refuses repeated keys too: the parsed value
 * keeps one of them, so its canonical form is shorter.
 */
export function isCanonical(text: string): boolean {
  try {
    return canonicalJson(JSON.parse(text)) === text;
  } catch {
    return false;
  }
}
