import { onceEach } from './once-each';
import type { Sight } from './sight';

const WORD = /^[a-z][\w-]{2,40}$/i;
const LABEL_MOST = 30;
const HINT_MOST = 120;
const ICON_FILE = /\.svg|icons?[/_-]|\bpin\b|marker/i;

/**
 * What a page calls an element: class, id, role, item property, the data of its tests, a short label for screen readers.
 * `its`: the names of its attributes, where they are known already.
 */
export function namesOf(
  sight: Sight,
  element: Element,
  its: readonly string[] = sight.attributeNames(element),
): string {
  let labels = '';
  let names = '';
  for (let index = 0; index < its.length; index++) {
    const name = its[index]!;
    const isName = name === 'class' || name === 'id' || name === 'role' || name === 'itemprop';
    const isLabel = name === 'aria-label' || name === 'title';
    if (!isName && !isLabel && !name.startsWith('data-')) continue;
    const value = sight.attribute(element, name) ?? '';
    // The last label stands first.
    if (isLabel) labels = value.length > LABEL_MOST ? labels : joined(labelled(value), labels);
    else if (isName || WORD.test(value)) names = joined(names, value);
  }
  return hintOf(joined(labels, names));
}

const joined = (a: string, b: string): string => (a === '' ? b : b === '' ? a : `${a} ${b}`);

/** A text for people among the names: in quotation marks. */
export const labelled = (text: string): string => `"${text.replaceAll('"', '').trim()}"`;

/** What an icon shows, by its names: those of a picture font, of the symbol that it uses, of its title; "" for none. */
export function iconOf(sight: Sight, element: Element, tag: string): string {
  if (tag === 'img') {
    const file = sight.attribute(element, 'src') ?? '';
    if (!ICON_FILE.test(file)) return '';
    const alt = labelled((sight.attribute(element, 'alt') ?? '').slice(0, LABEL_MOST));
    return hintOf(joined(joined(alt, namesOf(sight, element)), fileOf(file)));
  }
  const own = sight.hasAttributes(element) ? namesOf(sight, element) : '';
  const inner = tag === 'svg' ? sight.firstChild(element) : null;
  if (!inner || sight.nodeType(inner) !== 1) return own;
  const its = inner as Element;
  if (sight.tag(its) === 'title') return hintOf(joined(labelled(sight.textContent(its).slice(0, LABEL_MOST)), own));
  const used = sight.attribute(its, 'href') ?? sight.attribute(its, 'xlink:href');
  return hintOf(joined(own, used?.slice(used.indexOf('#') + 1) ?? ''));
}

const fileOf = (address: string): string => /([^/?#]{1,40})(?:[?#]|$)/.exec(address)?.[1] ?? '';

/** Of an icon's names and those of the element behind it. */
export const hintOfBoth = (icon: string, names: string): string => hintOf(joined(icon, names));

/** Names of an element as words: "adTitle ad_title" as "ad-title ad-title". */
export const hintOf = onceEach((names: string): string => {
  const text = names.slice(0, HINT_MOST);
  if (!/[A-Z_\u0080-\uffff]/.test(text)) return text;
  return text
    .replace(/([a-z])([A-Z])/g, '$1-$2')
    .replaceAll('_', '-')
    .toLowerCase();
});
