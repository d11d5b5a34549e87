/**
 * The same pattern, for texts whose accented letters stand composed, in two characters ("ü" as one, or "u" and its
 * accent) or without their accent: an advert keeps its own writing, so that what is quoted of it is what stands there.
 */
export function inEitherForm({ source, flags }: RegExp): RegExp {
  return new RegExp(
    source.replace(/[\u00c0-\u017f]/g, (letter) => {
      const apart = letter.normalize('NFD');
      return apart === letter ? letter : `(?:${letter}|${apart}|${apart[0]})`;
    }),
    flags,
  );
}
