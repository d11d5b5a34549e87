import { LARGEST_PHOTO, MOST_PHOTOS, type OwnPhoto, type PhotoTrouble } from '../../session/own-photos';
import { photoTexts as texts } from '../../text/catalogue/photos';
import { shown } from '../shown';
import { useFocusKept } from './focus-kept';

export interface PhotosState {
  photos: readonly OwnPhoto[];
  /** Files are being opened and drawn. */
  working: boolean;
  /** How many were added last, and what was wrong with others. */
  added: number;
  troubles: readonly PhotoTrouble[];
}

export const NO_PHOTOS: PhotosState = { photos: [], working: false, added: 0, troubles: [] };

export interface PhotosActions {
  pick: (files: readonly File[]) => void;
  remove: (id: string) => void;
}

interface Props {
  state: PhotosState;
  actions: PhotosActions;
  isPrivate: boolean;
}

/** The user's own photos of the machine: picked from files, kept here, removed as easily. */
export function OwnPhotos({ state: { photos, working, added, troubles }, actions, isPrivate }: Props) {
  const { part, pressed } = useFocusKept();
  return (
    <section class="group" aria-labelledby="photos" data-part="own-photos" ref={part}>
      <h2 id="photos" tabIndex={-1}>
        {texts.heading}
      </h2>
      <p>{texts.intro}</p>
      {isPrivate && <p>{texts.private}</p>}
      <p class="below">
        <input
          id="photo-file"
          class="unseen file"
          type="file"
          multiple
          accept="image/*"
          data-part="photo-file"
          disabled={working || photos.length >= MOST_PHOTOS}
          onChange={({ currentTarget }) => {
            actions.pick([...(currentTarget.files ?? [])]);
            currentTarget.value = '';
          }}
        />
        <label for="photo-file" class="button plain">
          {texts.pick}
        </label>
      </p>
      <div role="status" data-part="photo-state">
        {working && <p>{texts.working}</p>}
        {!working && added > 0 && <p>{texts.added(added)}</p>}
        {troubles.map((trouble) => (
          <p key={JSON.stringify(trouble)} data-trouble={trouble.why}>
            {troubleText(trouble)}
          </p>
        ))}
        {photos.length >= MOST_PHOTOS && <p>{texts.most(MOST_PHOTOS)}</p>}
      </div>
      {photos.length > 0 && (
        <ul class="photos">
          {photos.map(({ id, name, data }) => (
            <li key={id} data-photo={id}>
              <img src={data} alt={texts.alt(shown(name, 80))} />
              <button
                type="button"
                class="button plain"
                data-part="remove-photo"
                onClick={() => {
                  pressed();
                  actions.remove(id);
                }}
              >
                {texts.remove}
                <span class="unseen"> {shown(name, 80)}</span>
              </button>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

function troubleText(trouble: PhotoTrouble): string {
  switch (trouble.why) {
    case 'many':
      return texts.troubles.many(shown(trouble.name, 80), MOST_PHOTOS);
    case 'large':
      return texts.troubles.large(shown(trouble.name, 80), LARGEST_PHOTO / 1_000_000);
    case 'unreadable':
      return texts.troubles.unreadable(shown(trouble.name, 80));
    default:
      return texts.troubles[trouble.why];
  }
}
