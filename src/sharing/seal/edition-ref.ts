import * as z from 'zod/mini';

z.config({ jitless: true });

/** An edition by its number and its hash: SHA-256 of the pack's canonical JSON, in hexadecimal digits. */
export const EditionRef = z.strictObject({
  edition: z.int().check(z.gte(1)),
  hash: z.string().check(z.regex(/^[0-9a-f]{64}$/)),
});
export type EditionRef = z.infer<typeof EditionRef>;
