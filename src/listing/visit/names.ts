import type { Sight } from './sight';

const WORD = /^[a-z][\w-]{2,40}$/i;
const LABEL_MOST = 30;
const ICON_FILE = /\.svg|icons?[/_-]|\bpin\b|marker/i;

/** What a page calls an element: class, id, role, item property, the data of its tests, a short label for screen readers. */
export function namesOf(sight: Sight, element: Element): string {
  const names: string[] = [];
  for (const name of sight.attributeNames(element)) {
    const isName = name === 'class' || name === 'id' || name === 'role' || name === 'itemprop';
    const isData = name.startsWith('data-');
    const isLabel = name === 'aria-label' || name === 'title';
    if (!isName && !isData && !isLabel) continue;
    const value = sight.attribute(element, name) ?? '';
    if (isLabel && value.length <= LABEL_MOST) names.unshift(labelled(value));
    else if (isName || (isData && WORD.test(value))) names.push(value);
  }
  return hintOf(...names);
}

/** A text for people among the names: in quotation marks. */
export const labelled = (text: string): string => `"${text.replaceAll('"', '').trim()}"`;

/** What an icon shows, by its names: those of a picture font, of the symbol that it uses, of its title; "" for none. */
export function iconOf(sight: Sight, element: Element, tag: string): string {
  const own = namesOf(sight, element);
  if (tag === 'img' && !ICON_FILE.test(sight.attribute(element, 'src') ?? '')) return '';
  if (tag === 'img')
    return hintOf(
      labelled((sight.attribute(element, 'alt') ?? '').slice(0, LABEL_MOST)),
      own,
      fileOf(sight.attribute(element, 'src')),
    );
  const inner = tag === 'svg' ? sight.firstChild(element) : null;
  if (!inner || sight.nodeType(inner) !== 1) return own;
  const its = inner as Element;
  if (sight.tag(its) === 'title') return hintOf(labelled(sight.textContent(its).slice(0, LABEL_MOST)), own);
  const used = sight.attribute(its, 'href') ?? sight.attribute(its, 'xlink:href');
  return hintOf(own, used?.slice(used.indexOf('#') + 1) ?? '');
}

const fileOf = (address: string | null): string => /([^/?#]{1,40})(?:[?#]|$)/.exec(address ?? '')?.[1] ?? '';

/** Names of an element as words: "adTitle ad_title" as "ad-title ad-title". */
export function hintOf(...names: (string | null)[]): string {
  const text = names.filter(Boolean).join(' ').slice(0, 120);
  return text
    .replace(/([a-z])([A-Z])/g, '$1-$2')
    .replaceAll('_', '-')
    .toLowerCase();
}
