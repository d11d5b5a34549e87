/** The hash of Fowler, Noll and Vo (FNV-1a, 32 bits), over UTF-16 units. */
export function hashOf(key: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < key.length; i++) hash = Math.imul(hash ^ key.charCodeAt(i), 0x01000193);
  return hash >>> 0;
}
