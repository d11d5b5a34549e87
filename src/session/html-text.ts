/**
 * A text as it stands in HTML, between tags or in a quoted attribute: it can end neither, and begins nothing (HTML
 * Standard, 13.1.2 and 13.1.4). Characters that turn the reading direction are gone, so that nothing looks otherwise than
 * it is.
 */
export function htmlText(text: string): string {
  return text
    .replace(/[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069\ufeff]/g, '')
    .replace(/[&<>"'`]/g, (character) => `&#${character.charCodeAt(0)};`);
}

/** An inline picture's address, or "" for anything else: nothing that is opened from a file may load from elsewhere. */
export function inlinePicture(data: string): string {
  return /^data:image\/(?:png|jpeg|webp);base64,[A-Za-z0-9+/=]+$/.test(data) ? data : '';
}
