import type { Reading } from './reading';
import { AWAY } from './zones';

/** Boxes of the seller, of marks of trust and the like. */
const PERSON = /\b(?:seller|profile|avatar|author|user|badges?|payments?|trust|brand|verkaufer|vendeur)\b/;

/** Pictures of the advert itself: not those of other things for sale, nor of the parts that are not the advert. */
export function photosOf({ pictures, lines, boxes, zones, cards }: Reading): string[] {
  const isOfPerson = (box: number): boolean => {
    for (let at = box, step = 0; at >= 0 && step < 3; step++, at = boxes[at]!.parent)
      if (PERSON.test(boxes[at]!.hint)) return true;
    return false;
  };
  const isInCard = (box: number): boolean => {
    for (let at = box, step = 0; at >= 0 && step < 20; step++, at = boxes[at]!.parent)
      if (cards.boxes.has(at)) return true;
    return false;
  };
  const own = pictures.filter(({ box, line }) => {
    // A picture has no line of its own: it stands between two.
    const known = [line - 1, line].filter((index) => index >= 0 && index < lines.length);
    return !(known.length > 0 && known.every((index) => zones[index] === AWAY)) && !isInCard(box) && !isOfPerson(box);
  });
  // A picture that leads elsewhere is another thing's, where others lead nowhere.
  const still = own.filter(({ linked }) => !linked);
  return (still.length > 0 ? still : own).map(({ address }) => address);
}
