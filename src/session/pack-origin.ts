import { originTexts as texts } from '../text/catalogue/origin';

/** What is known of where a pack is from. */
export interface Origin {
  shipped: boolean;
  /** Fingerprint of the key that sealed it, or null. */
  sealedBy: string | null;
}

/** In a few words. What came with the program is as sound as the program. */
export function originOf({ shipped, sealedBy }: Origin): string {
  if (shipped) return texts.shipped;
  return sealedBy === null ? texts.unsealed : texts.sealedBy(sealedBy);
}

/** Whether nothing proves who wrote it. */
export function isUnsealed({ shipped, sealedBy }: Origin): boolean {
  return !shipped && sealedBy === null;
}
