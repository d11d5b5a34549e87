import type { Candidate } from '../types';
import { rounded } from './groups';
import type { SettledList } from './lists';

const PHOTOS_MOST = 40;

/** Words by which sites tell the sizes of one picture apart: at the end of its name, or as a folder. */
const SIZE_WORD =
  '(?:thumb\\w*|tn|small|medium|large|big|xx?l|xs|full|orig\\w*|zoom|preview|mini|scaled|gross|klein|mittel|grand|petit|moyen|crop\\w*|cent(?:er|re)|square|hd|sd|lg|md|sm|[wh]\\d{2,4}|\\d{2,4}[wh]|\\d+x\\d*|x\\d+|\\d+w|\\d{2,4}px|[sml]|t)';
const SIZE_END = new RegExp(`(?:[_.,;-](?:[swh]=)?${SIZE_WORD}|@\\dx)+$`);
/** A folder that names a size, or gives an image server its orders ("w_400,h_300"). */
const SIZE_FOLDER =
  /\/(?:thumb\w*|thumbnails?|small|medium|large|big|full|orig(?:inal)?s?|zoom|preview|mini|klein|gross|normal|fit-in|[osmlt]|[a-z]{1,3}[:_=-]\d{2,4}|\d+x\d*|[swh]_?\d{2,4}|max|(?:[a-z]{1,3}[_:-]\w+)(?:[,:;][^/]*)+|(?:rs|resize|fit|fill|size|width|w|h|q|f)[:=_-]\w[^/]*)(?=\/)/g;
/** A last part of the path that is nothing but a size. */
const SIZE_FILE =
  /\/(?:[whs]_?\d{2,4}|\d{2,4}x\d{2,4}|thumb\w*|small|medium|large|big|full|orig\w*|preview|640|800|1080|1200|1280|1600|1920|2048)$/;
/** Names of what a site shows of itself or of people. */
const OF_SITE = /(?:^|[/_.-])(?:logos?|favicon|sprite|avatars?|av)(?:[/_.-]|$)/;
const PICTURE_END = /\.(?:jpe?g|png|webp|avif|gif|heic)$/;

/** What stays of an address when its size, format and version are taken off: one photograph, one key. */
export function photoKey(address: string): string {
  try {
    const url = new URL(address);
    // In small letters from the start: patterns that don't mind the case take a browser twice as long.
    const [host, pathname] = [url.host.toLowerCase(), url.pathname.toLowerCase()];
    const name = pathname.replace(SIZE_FOLDER, '').replace(PICTURE_END, '');
    const bare = name.replace(SIZE_FILE, '').replace(SIZE_END, '') || name;
    // Where the path is a program, the query names the picture.
    const isProgram = /\.(?:php|aspx?|cgi|ashx)$|\/(?:image|img|photo|get)s?$/.test(pathname);
    return `${host}${bare}${isProgram ? url.search.toLowerCase() : ''}`;
  } catch {
    return address;
  }
}

/** Where a picture is filed: its folder, numbers left open, and the pattern of its name where that is more than a number. */
export function photoFamily(address: string): { folder: string; pattern: string } {
  const key = photoKey(address);
  const at = key.lastIndexOf('/');
  const folder = key.slice(0, Math.max(0, at)).replace(/\/(?=[^/]*\d)[\da-z-]+/g, '/#');
  const name = key.slice(at + 1);
  const [, stem = ''] = /^(.*[^\d].*?|.*\d{3,})(?:\d+|(?<=\d)[a-z])$/.exec(name) ?? [];
  return { folder, pattern: stem.length >= 3 ? `${key.slice(0, at)}/${stem}` : '' };
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
    if (OF_SITE.test(key)) continue;
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
