/** The rooms of the workbench, in the order in which they are offered. Their names are the anchors of its address. */
export const ROOMS = ['drafts', 'enquiry', 'sheets', 'prices', 'packs'] as const;
export type Room = (typeof ROOMS)[number];

/** The room that an address's anchor ("#drafts", "#prices?model=…") names; the packs where it names none. */
export function roomOf(anchor: string): Room {
  const [name] = anchor.split('?');
  return ROOMS.find((room) => name === `#${room}`) ?? 'packs';
}
