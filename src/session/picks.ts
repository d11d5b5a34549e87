import { PICKABLE, type Pick, type Pickable, type Picks } from '../listing/picks';
import type { Seen, SeenValue } from './seen';

// What the user says of how a page is read is kept with what they say of the thing: read, kept and taken back alike.

/** No attribute has such a name: a reference has a stroke in it and no colon. */
const BEFORE = 'read:';

export const pickName = (field: Pickable): string => BEFORE + field;

/** A pick as an answer that can be kept. What was typed stands in one line. */
export function pickAnswer(pick: Pick): string {
  return pick.how === 'picked' ? `=${pick.value}` : `>${pick.value.replace(/\s+/g, ' ').trim()}\n${pick.was}`;
}

/** The picks among a listing's answers. */
export function picksIn(seen: Seen): Picks {
  const picks: Picks = {};
  for (const field of PICKABLE) {
    const pick = pickFrom(seen.get(pickName(field)));
    if (pick && (pick.how === 'picked' || field === 'price')) picks[field] = pick;
  }
  return picks;
}

function pickFrom(answer: SeenValue | undefined): Pick | null {
  if (typeof answer !== 'string') return null;
  if (answer.startsWith('=')) return { how: 'picked', value: answer.slice(1) };
  const end = answer.indexOf('\n');
  if (!answer.startsWith('>') || end < 0) return null;
  return { how: 'typed', value: answer.slice(1, end), was: answer.slice(end + 1) };
}

/** The answers that are about the thing itself. */
export function withoutPicks(seen: Seen): Seen {
  return new Map([...seen].filter(([name]) => !name.startsWith(BEFORE)));
}
