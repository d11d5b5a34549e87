import { photoFamily } from '../decide/photos';
import { CONTROL, type Picture } from '../types';
import { amountsIn } from './amounts';
import { isOnly, type Reading, sizeOf } from './reading';
import { sharedWords } from './shared-words';
import { AWAY, MAIN } from './zones';

/** Boxes of the seller, of marks of trust and the like. */
const PERSON =
  /\b(?:seller|profile|avatar|av|author|byline|poster|who|user|badges?|payments?|trust|brand|verkaufer|vendeur|verkoper|venditore|vendedor|saljare)(?!\w)/;
const GALLERY =
  /\b(?:gallery|galerie|galleria|galeria|carousel|slide\w*|swiper|thumb\w*|photos?|images?|pictures?|media|viewer|lightbox|bild\w*|foto\w*|fotki|kuvat|hero)(?!\w)/;
/** Captions and buttons of a gallery, all together. */
const CAPTIONS_MOST = 120;
const LINES_NEAR_TITLE = 30;
const LEVELS_MOST = 4;
/** Names of sites are short. */
const SITE_WORDS = 3;

/**
 * Pictures of the advert itself, in their order: the one for which most speaks (its text says what the title says, a box
 * called a gallery, standing near the title), what stands beside it with no more than captions between, and what is filed
 * with it. Not those of other things for sale, of people and of the parts that are not the advert.
 */
export function photosOf(reading: Reading, title: string, siteNames: readonly string[]): string[] {
  const { pictures, lines, boxes, zones, cards, titleLine } = reading;
  const around = (box: number, most: number, holds: (at: number) => boolean): boolean => {
    for (let at = box, step = 0; at >= 0 && step < most; step++, at = boxes[at]!.parent) if (holds(at)) return true;
    return false;
  };
  const isAway = ({ line }: Picture): boolean => {
    // A picture has no line of its own: it stands between two.
    const known = [line - 1, line].filter((index) => index >= 0 && index < lines.length);
    return known.length > 0 && known.every((index) => zones[index] === AWAY);
  };
  const isOfSite = ({ alt }: Picture): boolean =>
    alt !== undefined &&
    !/\d/.test(alt) &&
    alt.split(' ').length <= SITE_WORDS &&
    sharedWords(alt, title) < 0.5 &&
    siteNames.some((name) => name !== '' && sharedWords(alt, name) === 1);
  const priced = pricedApart(reading);
  // Where photographs are, the other kind of file is for buttons and lines.
  const kindOf = ({ address }: Picture) => /\.(j|png|gif)[^.]*$/i.exec(address)?.[1]?.toLowerCase();
  const drawn = pictures.some((picture) => !picture.linked && kindOf(picture) === 'j') ? /gif|png/ : /gif/;
  const isDrawn = (picture: Picture) => drawn.test(kindOf(picture) ?? '');
  const hasPhotographs = !pictures.every(isDrawn);
  const own = pictures.filter(
    (picture) =>
      !(hasPhotographs && isDrawn(picture)) &&
      !isAway(picture) &&
      !isOfSite(picture) &&
      !priced.has(picture) &&
      !around(picture.box, 20, (at) => cards.boxes.has(at)) &&
      !around(picture.box, 3, (at) => PERSON.test(boxes[at]!.hint)),
  );

  const saysTitle = ({ alt }: Picture): boolean => alt !== undefined && title !== '' && sharedWords(title, alt) >= 0.6;
  const isInGallery = ({ box }: Picture): boolean => around(box, LEVELS_MOST, (at) => GALLERY.test(boxes[at]!.hint));
  const zoneOf = ({ line }: Picture) => Math.min(zones[line] ?? AWAY, zones[line - 1] ?? AWAY);
  const score = (picture: Picture): number =>
    (saysTitle(picture) ? 3 : 0) +
    (isInGallery(picture) ? 2 : 0) +
    (titleLine >= 0 && Math.abs(picture.line - titleLine) <= LINES_NEAR_TITLE ? 1 : 0) -
    (picture.linked ? 2 : 0) -
    (picture.small ? 1 : 0) -
    (zoneOf(picture) === MAIN ? 0 : 1);
  let best: Picture | undefined;
  for (const picture of own) if (!best || score(picture) > score(best)) best = picture;
  if (!best) return [];

  const gallery = galleryAround(reading, best.box);
  const { folder, pattern } = photoFamily(best.address);
  const seed = best;
  const isSeries =
    pattern !== '' && own.some((picture) => picture !== seed && photoFamily(picture.address).pattern === pattern);
  const isOne = (picture: Picture): boolean => {
    if (picture === seed || picture.box === seed.box) return true;
    if (gallery >= 0 && around(picture.box, 20, (at) => at === gallery)) return true;
    const its = photoFamily(picture.address);
    if (pattern !== '' && its.pattern === pattern) return true;
    if (picture.small || (picture.linked && !seed.linked)) return false;
    if (saysTitle(picture)) return true;
    return !isSeries && (its.folder === folder || (isInGallery(picture) && zoneOf(picture) === MAIN));
  };
  return own.filter(isOne).map(({ address }) => address);
}

/** Pictures of one box with an amount of money behind each: things for sale set in a row without boxes of their own. */
function pricedApart({ pictures, lines }: Reading): ReadonlySet<Picture> {
  const byBox = new Map<number, Picture[]>();
  for (const picture of pictures) {
    const same = byBox.get(picture.box);
    if (same) same.push(picture);
    else byBox.set(picture.box, [picture]);
  }
  const found = new Set<Picture>();
  for (const same of byBox.values()) {
    const priced = same.filter(({ line }, index) =>
      lines
        .slice(line, Math.min(same[index + 1]?.line ?? line + 3, line + 3))
        .some(({ text }) => text.length < 80 && amountsIn(text).length > 0),
    );
    if (priced.length >= 3 && priced.length >= same.length - 1) for (const picture of same) found.add(picture);
  }
  return found;
}

/** The outermost box around a picture that holds nothing but pictures and their captions, or -1. */
function galleryAround({ boxes, lines }: Reading, box: number): number {
  const words = (at: number): number => {
    let sum = 0;
    for (let index = boxes[at]!.from; index < boxes[at]!.to && sum <= CAPTIONS_MOST; index++)
      if (!isOnly(lines[index]!, CONTROL)) sum += lines[index]!.text.length;
    return sum;
  };
  if (words(box) > CAPTIONS_MOST) return -1;
  let at = box;
  for (let step = 0; step < 8; step++) {
    const { parent } = boxes[at]!;
    if (parent < 0 || /^(?:html|body|main)$/.test(boxes[parent]!.tag)) break;
    if (sizeOf(boxes[parent]!) > 12 || words(parent) > CAPTIONS_MOST) break;
    at = parent;
  }
  return at;
}
