import type { Likely } from '../audit/types';
import { say } from '../audit/words';
import type { Knowledge } from '../pack/knowledge';
import { besideOf } from './side-by-side';

/** A small picture of a pack, with whose it is and what it may be used for. */
export interface PackPicture {
  /** An inline picture: a data: address of a PNG, JPEG or WebP, as the pack's checker lets it pass. */
  data: string;
  /** What is to be seen on it. */
  shows: string;
  credit: string;
  licence: string;
}

/** Model reference -> its pictures, the first ones first. */
export type Pictures = ReadonlyMap<string, readonly PackPicture[]>;

/** Pictures of one candidate: more are not looked at side by side. */
const MOST_EACH = 2;

/** The pictures that packs have of the candidates which are set side by side. */
export function picturesOf(likely: readonly Likely[], { models }: Knowledge): Pictures {
  return new Map(
    besideOf(likely).flatMap(({ model }) => {
      const pictures = (model === null ? undefined : models.get(model)?.def.pictures) ?? [];
      const shown = pictures
        .slice(0, MOST_EACH)
        .map(({ data, shows, credit, licence }): PackPicture => ({ data, shows: say(shows), credit, licence }));
      return shown.length === 0 || model === null ? [] : [[model, shown]];
    }),
  );
}
