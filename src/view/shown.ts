import { shownTexts } from '../text/catalogue/shown';

/**
 * Characters that turn the reading direction (Unicode Standard Annex 9), controls, and others that leave no mark: they
 * could make a quoted word look like another one, so they are shown as what they are.
 */
const UNSEEN = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u061c\u200b\u200e\u200f\u202a-\u202e\u2060-\u2069\ufeff]/g;

/** UTF-16 units by which a text may be longer than its limit: what is left out must be worth saying so. */
const SLACK = 40;

/**
 * A page's or pack's text as it is put on the screen: nothing hidden in it, and not much longer than `limit` UTF-16
 * units.
 */
export function shown(text: string, limit = 600): string {
  const cut = text.length > limit + SLACK ? cutAt(text, limit) : text;
  const visible = cut.replace(
    UNSEEN,
    (character) => `⟨U+${character.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}⟩`,
  );
  return cut === text ? visible : `${visible}${shownTexts.cut(text.length - cut.length)}`;
}

/** Between words where there are any, and never between the halves of a character. */
function cutAt(text: string, limit: number): string {
  const space = text.lastIndexOf(' ', limit);
  if (space > Math.max(limit - SLACK, limit / 2)) return text.slice(0, space);
  const last = text.charCodeAt(limit - 1);
  return text.slice(0, last >= 0xd800 && last <= 0xdbff ? limit - 1 : limit);
}

/** A language tag that may stand in a `lang` attribute, or undefined: what a page states there can be anything. */
export function langOf(tag: string | null | undefined): string | undefined {
  return tag && /^[A-Za-z]{2,3}(?:-[A-Za-z0-9]{2,8}){0,3}$/.test(tag) ? tag : undefined;
}
