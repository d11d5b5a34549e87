import { isDoubtful } from '../../listing/doubt';
import { type Lapsed, PICKABLE, type Pickable } from '../../listing/picks';
import type { Listing } from '../../listing/types';
import { panelTexts } from '../../text/catalogue/panel';
import { pickTexts } from '../../text/catalogue/picks';

/** Said at the top, where it is not known how the page is to be read, or where the user has decided it: the way there. */
export function ReadingNote({ listing, lapsed }: { listing: Listing; lapsed: readonly Lapsed[] }) {
  const { checked, own } = asked(listing, lapsed);
  if (checked.length + own.length === 0) return null;
  return (
    <p class="soft" data-part="reading-note">
      <WayTo fields={checked} said={pickTexts.toCheck} /> <WayTo fields={own} said={pickTexts.own} />
    </p>
  );
}

function WayTo({ fields, said }: { fields: readonly Pickable[]; said: (names: string) => string }) {
  if (fields.length === 0) return null;
  return (
    <button type="button" class="way" onClick={() => goToPick(fields[0]!)}>
      {said(fields.map((field) => panelTexts.read.fields[field].toLowerCase()).join(', '))}
    </button>
  );
}

/**
 * Leads to what can be said of a field, unfolding what it may be folded in. By no address: where that has changed, Firefox
 * loads its side bar anew at the next press of the button.
 */
function goToPick(field: Pickable): void {
  const pick = document.querySelector<HTMLDetailsElement>(`[data-part="pick-${field}"]`);
  for (let at = pick; at; at = at.parentElement?.closest('details') ?? null) at.open = true;
  pick?.querySelector('summary')?.focus();
}

/** Fields whose reading somebody should look at, and those of which the user has. */
export function asked(listing: Listing, lapsed: readonly Lapsed[]) {
  const noted = PICKABLE.map((field) => ({ field, note: listing.fields[field] }));
  return {
    checked: noted.flatMap(({ field, note }) =>
      (note && isDoubtful(field, note)) || lapsed.some((one) => one.field === field) ? [field] : [],
    ),
    own: noted.flatMap(({ field, note }) => (note?.byUser ? [field] : [])),
  };
}
