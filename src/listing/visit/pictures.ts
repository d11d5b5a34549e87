import { tidy } from '../tidy';
import type { Picture } from '../types';
import { absolute } from './addresses';
import type { Sight } from './sight';
import type { Walk } from './walked';

/** Where pages keep the address of the large picture until it is needed, best first. */
const LARGE = [
  'data-zoom-image',
  'data-zoom',
  'data-full',
  'data-large',
  'data-original',
  'data-srcset',
  'srcset',
  'data-src',
  'data-lazy-src',
  'src',
];
const DECORATION = /icon|logo|avatar|sprite|flag|emoji|badge|pixel|tracking|spacer|captcha|profile/i;
/** Alternative texts of what is on the page beside the photographs. */
const NO_PHOTO = /\b(?:map|karte|carte|kaart|mappa|mapa|logo|icon|banner|payment)\b/i;
const BESIDE_PATH = /[/_-](?:maps?|tiles?|qr|banners?|payments?|placeholder|blank|loading)[/_.-]/i;
const PICTURE_FILE = /\.(?:jpe?g|png|webp|avif|gif)(?:[?#]|$)/i;
/** Pixels as written. Smaller ones are thumbnails, and the smallest decoration. */
const SMALL = 80;
const SMALLEST = 32;
const ALT_MOST = 120;
const PICTURES_MOST = 120;
/** Images looked at between two pauses that may be made. */
const IMAGES_OF_A_STEP = 50;

/** The pictures of a page that are no decoration, by absolute address. None is loaded. */
export function* picturesOf(sight: Sight, images: Walk['images']): Generator<void, Picture[]> {
  const found: Picture[] = [];
  for (const [index, { element, box, line, link }] of images.entries()) {
    if (found.length >= PICTURES_MOST) break;
    if (index % IMAGES_OF_A_STEP === IMAGES_OF_A_STEP - 1) yield;
    const get = (name: string) => sight.attribute(element, name) ?? '';
    const isBelow = (pixels: number) => ['width', 'height'].some((name) => Number.parseInt(get(name), 10) < pixels);
    if (
      isBelow(SMALLEST) ||
      DECORATION.test(`${get('class')} ${get('id')} ${get('src')}`) ||
      NO_PHOTO.test(get('alt')) ||
      BESIDE_PATH.test(get('src')) ||
      !sight.shown(element)
    )
      continue;
    const isEnlarged = link !== null && PICTURE_FILE.test(link);
    const written = isEnlarged ? link : (largeOf(get) ?? keptFor(sight, element) ?? drawnBehind(get('style')));
    const address = written && absolute(written, sight.base);
    const alt = tidy(get('alt').slice(0, ALT_MOST));
    if (address && address.length < 1000)
      found.push({
        address,
        box,
        line,
        linked: link !== null && !isEnlarged && !/^(?:#|javascript:)/i.test(link),
        ...(alt ? { alt } : {}),
        ...(isBelow(SMALL) ? { small: true } : {}),
      });
  }
  return found;
}

/** The address that a page's scripts keep in an attribute of their own until the picture is needed. */
function keptFor(sight: Sight, element: Element): string | null {
  for (const name of sight.attributeNames(element)) {
    const value = name.startsWith('data-') ? (sight.attribute(element, name) ?? '') : '';
    if (PICTURE_FILE.test(value) && !/\s/.test(value)) return value;
    if (/^data-\w*(?:src|image|img)$/.test(name) && /^(?:https?:)?\/\//.test(value)) return value;
  }
  return null;
}

/** The picture that a style sets behind an element. */
const drawnBehind = (style: string): string | null => /\burl\(\s*["']?([^"')]+)["']?\s*\)/.exec(style)?.[1] ?? null;

function largeOf(get: (name: string) => string): string | null {
  for (const name of LARGE) {
    const value = get(name);
    const address = name.endsWith('srcset') ? largest(value) : value.trim();
    if (address && !/^(?:data|blob|javascript):/i.test(address)) return address;
  }
  return null;
}

/** Of a srcset (HTML standard) the address with the largest width or density, or null. */
export function largest(srcset: string): string | null {
  let best: string | null = null;
  let size = -1;
  let address = '';
  for (const token of `${srcset.slice(0, 8000).trim()},`.split(/\s+/)) {
    // An address may hold commas but not end with one: that ends the candidate.
    const bare = token.replace(/,{1,9}$/, '');
    const described = /^([\d.]+)[wx]$/.exec(bare)?.[1];
    const own = Number(described ?? 1);
    if (address === '') address = described === undefined ? bare : '';
    if (bare === token || address === '') continue;
    if (own > size) {
      size = own;
      best = address;
    }
    address = '';
  }
  return best;
}
