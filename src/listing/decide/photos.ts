import type { Candidate } from '../types';
import { rounded } from './groups';
import type { SettledList } from './lists';

const PHOTOS_MOST = 40;

/** Words by which sites tell the sizes of one picture apart, at the end of its name or as a folder. */
const SIZE_END =
  /(?:[_.-](?:\d+x\d*|x\d+|\d+w|thumb\w*|small|medium|large|big|xl|full|orig\w*|zoom|preview|mini|scaled|gross|klein|[sml])|@\dx)+$/i;
const SIZE_FOLDER =
  /\/(?:thumb\w*|small|medium|large|big|full|orig(?:inal)?|zoom|preview|mini|\d+x\d*|[swh]_?\d{2,4}|max)(?=\/)/gi;

/** What stays of an address when its size, format and version are taken off: one photograph, one key. */
export function photoKey(address: string): string {
  try {
    const { host, pathname, search } = new URL(address);
    const name = pathname.replace(SIZE_FOLDER, '').replace(/\.(?:jpe?g|png|webp|avif|gif)$/i, '');
    const bare = name.replace(SIZE_END, '');
    // Where the path is a program, the query names the picture.
    const isProgram = /\.(?:php|aspx?|cgi|ashx)$|\/(?:image|img|photo|get)s?$/i.test(pathname);
    return `${host}${bare}${isProgram ? search : ''}`.toLowerCase();
  } catch {
    return address;
  }
}

/**
 * Addresses of photographs, each photograph once: those that machines are told of first (chosen for the item), then the
 * page's. Where the two have nothing in common, the pages' own names for one set differ: the larger set is taken, and of
 * two or more that machines are told of, those.
 */
export function settlePhotos(candidates: Candidate[]): SettledList | null {
  const told = new Map<string, Candidate>();
  const shown = new Map<string, Candidate>();
  for (const photo of [...candidates].sort((a, b) => b.weight - a.weight)) {
    const set = photo.source === 'page' || photo.source === 'draft' ? shown : told;
    const key = photoKey(photo.value);
    if (!set.has(key) && set.size < PHOTOS_MOST) set.set(key, photo);
  }
  const isShared = [...told.keys()].some((key) => shown.has(key));
  let chosen = [...new Map([...shown, ...told])];
  if (!isShared && told.size > 0 && shown.size > 0) chosen = [...(told.size === 1 && shown.size > 1 ? shown : told)];
  const photos = chosen.map(([, photo]) => photo).sort((a, b) => b.weight - a.weight);
  const [first] = photos;
  if (!first) return null;
  return {
    values: photos.slice(0, PHOTOS_MOST).map(({ value }) => value),
    note: { source: first.source, confidence: rounded(first.weight), alternatives: [] },
  };
}
