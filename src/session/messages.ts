import * as z from 'zod/mini';

z.config({ jitless: true });

const whole = z.int().check(z.gte(0));

/** Panel to worker: whether this reading has something to show, for the mark on the toolbar button. */
export const Mark = z.object({
  type: z.literal('mark'),
  window: whole,
  tab: whole,
  number: whole,
  something: z.boolean(),
});

/** Workbench to panels and other workbenches: packs were installed, removed or switched. */
export const PacksChanged = z.object({ type: z.literal('packs-changed') });

/** Panel to panels of other windows: what was seen of a page has changed. */
export const SeenChanged = z.object({ type: z.literal('seen-changed'), about: z.string().check(z.maxLength(4_000)) });

/** Workbench to other workbenches: drafts were written, removed or put back, or something was seen of one. */
export const DraftsChanged = z.object({ type: z.literal('drafts-changed') });

/** Workbench to panels and other workbenches: prices were kept, removed or put back. */
export const PricesChanged = z.object({ type: z.literal('prices-changed') });

/** Background or workbench to workbenches: a pack is followed, or no longer, or was checked. */
export const FollowingChanged = z.object({ type: z.literal('following-changed') });

export const Message = z.discriminatedUnion('type', [
  Mark,
  PacksChanged,
  SeenChanged,
  DraftsChanged,
  PricesChanged,
  FollowingChanged,
]);
export type Message = z.infer<typeof Message>;

/** Who sent a message, as the browser says it. */
export interface Sender {
  id?: string | undefined;
  url?: string | undefined;
}

/** Our own extension as it knows itself: its id and the address of its pages ("chrome-extension://id/"). */
export interface Ourselves {
  id: string;
  pages: string;
}

/**
 * A message that one of our own pages sent, or null for everything else: other extensions, scripts that run in a web
 * page (also those that carry our id), and anything of another shape.
 */
export function messageFrom(value: unknown, sender: Sender, we: Ourselves): Message | null {
  if (sender.id !== we.id || !sender.url?.startsWith(we.pages)) return null;
  const read = Message.safeParse(value);
  return read.success ? read.data : null;
}
