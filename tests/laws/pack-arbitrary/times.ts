/** Laws are tried five times as often with `npm run test:long`. */
export const TIMES = process.env.BEDPLATE_LONG ? 5 : 1;

/** Generated packs are large, and this machine may have other work. */
export const PATIENCE = { timeout: 60_000 * TIMES };
