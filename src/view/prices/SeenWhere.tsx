import { shown } from '../shown';

interface Props {
  of: { place?: string | null | undefined; link?: string | null | undefined; note?: string | null | undefined };
}

/** Addresses that lead to a page and nowhere else. */
const PAGE = /^https?:\/\//i;
const MOST = 120;

/** Where a price was seen and what was noted of it. Its page is opened by whoever presses its address. */
export function SeenWhere({ of: { place, link, note } }: Props) {
  if (!place && !link && !note) return null;
  return (
    <div class="seen-where soft">
      {place && <p data-part="seen-place">{shown(place, MOST)}</p>}
      {note && <p data-part="seen-note">{shown(note)}</p>}
      {link && (
        <p data-part="seen-link">
          {PAGE.test(link) ? (
            <a href={link} target="_blank" rel="noreferrer">
              {shown(link, MOST)}
            </a>
          ) : (
            shown(link, MOST)
          )}
        </p>
      )}
    </div>
  );
}
