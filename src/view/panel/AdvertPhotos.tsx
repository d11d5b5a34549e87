import { useState } from 'preact/hooks';
import { besideTexts } from '../../text/catalogue/beside';

const texts = besideTexts.advert;

/** The advert's own photos, one at a time; none is fetched before somebody asks for it. */
export function AdvertPhotos({ photos }: { photos: readonly string[] }) {
  const usable = photos.filter((address) => /^https?:\/\//i.test(address));
  const [at, setAt] = useState<number | null>(null);
  const [failed, setFailed] = useState<ReadonlySet<number>>(new Set());
  const address = at === null ? undefined : usable[at];
  if (usable.length === 0) return null;
  if (at === null || address === undefined)
    return (
      <div class="advert-photos">
        <button type="button" class="button plain" data-part="show-photos" onClick={() => setAt(0)}>
          {texts.show}
        </button>
        <p class="soft">{texts.note}</p>
      </div>
    );
  return (
    <div class="advert-photos" data-part="advert-photos">
      {failed.has(at) ? (
        <p role="status">{texts.failed}</p>
      ) : (
        // The policy stands before the address: a browser fetches anew when it changes after.
        <img
          referrerpolicy="no-referrer"
          src={address}
          alt={texts.alt(at + 1, usable.length)}
          data-part="advert-photo"
          onError={() => setFailed(new Set([...failed, at]))}
        />
      )}
      {usable.length > 1 && (
        <p class="photo-steps">
          <button type="button" class="button plain" disabled={at === 0} onClick={() => setAt(at - 1)}>
            {texts.before}
          </button>
          <button
            type="button"
            class="button plain"
            data-part="next-photo"
            disabled={at === usable.length - 1}
            onClick={() => setAt(at + 1)}
          >
            {texts.next}
          </button>
        </p>
      )}
    </div>
  );
}
