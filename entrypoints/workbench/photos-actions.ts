import { putPhotos, readPhotos, removePhoto } from '../../src/keep/photos';
import type { KeptPhoto } from '../../src/keep/schema';
import { accepted, type OwnPhoto, type PhotoTrouble } from '../../src/session/own-photos';
import type { PhotosActions, PhotosState } from '../../src/view/workbench/OwnPhotos';
import { withKeep } from '../shared/keep';
import { drawPhoto, inlineJpeg } from './draw-photo';

/** What can be done with the user's own photos of one thing. @param about what they are kept under */
export function photosActions(
  about: string,
  isPrivate: boolean,
  state: () => PhotosState,
  show: (change: Partial<PhotosState>) => void,
): { actions: PhotosActions; start: () => Promise<void> } {
  async function keep(kept: readonly KeptPhoto[]): Promise<PhotoTrouble[]> {
    if (isPrivate || kept.length === 0) return [];
    const done = await withKeep((db) => putPhotos(db, kept));
    return done.ok ? [] : [{ why: done.trouble === 'full' ? 'full' : 'failed' }];
  }

  async function draw(file: File, number: number): Promise<{ kept: KeptPhoto; shown: OwnPhoto } | PhotoTrouble> {
    const bytes = await drawPhoto(file);
    if (!bytes) return { why: 'unreadable', name: file.name };
    const { name } = file;
    // Photos that are picked at once stay in their order.
    const addedAt = new Date(Date.now() + number).toISOString();
    const id = crypto.randomUUID();
    return { kept: { id, about, name, addedAt, bytes }, shown: { id, name, data: await inlineJpeg(bytes) } };
  }

  return {
    actions: {
      async pick(chosen) {
        if (state().working) return;
        const { files, troubles } = accepted(chosen, state().photos.length);
        show({ working: true, troubles: [], added: 0 });
        const kept: KeptPhoto[] = [];
        for (const [number, file] of files.entries()) {
          const drawn = await draw(file, number);
          if ('why' in drawn) troubles.push(drawn);
          else {
            kept.push(drawn.kept);
            show({ photos: [...state().photos, drawn.shown] });
          }
        }
        show({ troubles: [...troubles, ...(await keep(kept))], added: kept.length, working: false });
      },
      async remove(id) {
        show({ photos: state().photos.filter((photo) => photo.id !== id), troubles: [], added: 0 });
        if (isPrivate) return;
        const done = await withKeep((db) => removePhoto(db, id));
        if (!done.ok) show({ troubles: [{ why: 'failed' }] });
      },
    },
    async start() {
      if (isPrivate) return;
      const done = await withKeep((db) => readPhotos(db, about));
      if (!done.ok) return;
      const photos = await Promise.all(
        done.value.map(async ({ id, name, bytes }) => ({ id, name, data: await inlineJpeg(bytes) })),
      );
      show({ photos: [...photos, ...state().photos] });
    },
  };
}
