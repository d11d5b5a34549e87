import { BOLD, type Box, CONTROL, LINK, RAISED, STRUCK } from '../types';
import { beginsWithPicture, slotted } from './children';
import {
  BLOCK_STYLE,
  BLOCKS,
  DRAWN,
  HEADS,
  HIDING,
  ICONS,
  INLINE,
  ITEMS_CLASS,
  ITEMS_STYLE,
  NOT_ITEMS,
  PICTURED,
  PRE_STYLE,
  RAISED_CLASS,
  SET_HIGH,
  SILENT,
  STRIKES,
  STRIKING,
  UNSEEN_CLASS,
  WAITING,
} from './elements';
import { hintOf, iconOf, labelled, namesOf } from './names';
import type { Sight } from './sight';

const KEEPS_BREAKS = 32;
const HIDDEN = 64;
/** Its children are set as items of a row or grid, each by itself. */
const HOLDS_ITEMS = 128;
/** Hidden, but read out. */
const FOR_SCREENS = 256;

/** The text of one text node, as it stands there. */
export interface Part {
  raw: string;
  flags: number;
  /** The element that holds the text. */
  element: Element;
  /** Names of the icon that stands right before it, or "". */
  icon: string;
}

/** A line before anybody asked what a person can see of it. */
export interface Stretch {
  parts: Part[];
  box: number;
}

/** A page in document order, from one walk over its nodes. Attributes are read, layout is not. */
export interface Walk {
  lines: Stretch[];
  boxes: Box[];
  images: { element: Element; box: number; line: number; link: string | null }[];
  times: { element: Element; line: number }[];
  /** Elements that say something to machines: meta, title, link and base. */
  heads: Element[];
  /** Script elements of type application/ld+json. */
  linkedData: Element[];
  /** Elements that begin a microdata item, and the first element of each id. */
  scopes: Element[];
  ids: Map<string, Element>;
  /** Index of the first line of the first h1, or 0. */
  title: number;
  /** Script elements that may hold the page's state: those without an address. */
  scripts: Element[];
  /** Addresses of frames that show something of another origin. */
  unread: string[];
  /** How many nodes were read. */
  nodes: number;
  /** The page had more nodes than are read. */
  cut: boolean;
}

/** More nodes than any advert needs; what comes after is not read. */
const NODES_MOST = 400_000;

/** A document's own frames and their frames. */
const FRAMES_MOST = 20;
const UNREAD_MOST = 10;

/** Characters of a style or class that are looked at. */
const NAMES_MOST = 1000;

/** A shadow tree: its host's own children are seen where it has slots for them, and nowhere else. */
interface Tree {
  host: Element;
  outer: Tree | null;
}

interface Frame {
  element: Element;
  next: Node | null;
  /** What comes after `next`, where that is not its sibling: the nodes of a slot. */
  rest: Node[] | null;
  tree: Tree | null;
  flags: number;
  box: number;
  opened: boolean;
  link: string | null;
}

/** Walks once over `from` and all in it, at most `most` nodes, without recursion; linear in its nodes. */
export function walk(sight: Sight, from: Element | null = sight.root, most = NODES_MOST): Walk {
  const out: Walk = {
    lines: [],
    boxes: [],
    images: [],
    times: [],
    heads: [],
    linkedData: [],
    scopes: [],
    ids: new Map(),
    title: -1,
    scripts: [],
    unread: [],
    nodes: 0,
    cut: false,
  };
  const { lines, boxes } = out;
  let frames = FRAMES_MOST;
  const stack: Frame[] = [];
  let parts: Part[] = [];
  let icon = '';
  /** An element in the line has just ended, and another begins with nothing between. */
  let hasEnded = false;
  let isBeside = false;
  /** An item of a row or grid begins. */
  let isItem = false;

  const endLine = () => {
    parts = [];
  };
  const say = (raw: string, { flags, box, element }: Frame) => {
    if (flags & HIDDEN) {
      if (flags & FOR_SCREENS && /\S/.test(raw) && raw.length < 60) icon = labelled(raw.trim().replace(/:$/, ''));
      return;
    }
    if (/\S/.test(raw)) {
      const last = parts.findLast((part) => /\S/.test(part.raw))?.raw ?? '';
      if ((isBeside || isItem) && last !== '' && !(flags & RAISED) && !isOneText(last, raw, isItem)) endLine();
      isBeside = false;
      isItem = false;
    }
    for (const [index, piece] of (flags & KEEPS_BREAKS ? raw.split('\n') : [raw]).entries()) {
      if (index > 0) endLine();
      // White space belongs to a line only behind a word.
      if (parts.length === 0) {
        if (!/\S/.test(piece)) continue;
        lines.push({ parts, box });
      }
      parts.push({ raw: piece, flags, element, icon });
      if (/\S/.test(piece)) icon = '';
    }
  };

  const open = (element: Element, around?: Frame) => {
    const tag = sight.tag(element);
    let flags = around?.flags ?? 0;
    let box = around?.box ?? -1;
    let link = around?.link ?? null;
    let tree = around?.tree ?? null;
    let block = BLOCKS.has(tag) || tag.includes('-') || box < 0;
    let hint = '';
    let level = 0;
    let isPictured = false;
    let holdsItems = false;
    const get = (name: string) => sight.attribute(element, name);

    if (tag === 'script') {
      if (/^\s*application\/ld\+json/i.test(get('type') ?? '')) out.linkedData.push(element);
      else if (get('src') === null) out.scripts.push(element);
      return;
    }
    if (sight.hasAttributes(element)) {
      const id = get('id');
      if (id && !out.ids.has(id)) out.ids.set(id, element);
      if (get('itemscope') !== null) out.scopes.push(element);
      const style = get('style')?.slice(0, NAMES_MOST);
      if (style) {
        if (HIDING.test(style)) flags |= HIDDEN;
        if (STRIKES.test(style)) flags |= STRUCK;
        if (SET_HIGH.test(style)) flags |= RAISED;
        if (PRE_STYLE.test(style)) flags |= KEEPS_BREAKS;
        if (BLOCK_STYLE.test(style)) block = true;
        if (ITEMS_STYLE.test(style)) holdsItems = true;
        if (style.includes('url(') && (DRAWN.test(style) || PICTURED.test(`${get('class')} ${get('id')}`)))
          isPictured = true;
      }
      if (get('hidden') !== null) flags |= HIDDEN;
      const named = (get('class') ?? '').slice(0, NAMES_MOST);
      const role = get('role');
      if (UNSEEN_CLASS.test(named)) flags |= HIDDEN | FOR_SCREENS;
      if (RAISED_CLASS.test(named)) flags |= RAISED;
      if (ITEMS_CLASS.test(named)) holdsItems = true;
      if (role === 'button') {
        flags |= CONTROL;
        block = true;
      }
      if (role === 'heading') level = Math.min(6, Math.max(1, Math.trunc(Number(get('aria-level'))) || 2));
      if (block) hint = namesOf(sight, element);
      if (get('aria-hidden') === 'true' && WAITING.test(`${tag} ${hint}`)) flags |= HIDDEN;
    }
    if (around && around.flags & HOLDS_ITEMS && !block && !NOT_ITEMS.has(tag)) isItem = true;
    flags = (flags & ~HOLDS_ITEMS) | (holdsItems ? HOLDS_ITEMS : 0);
    isBeside ||= hasEnded && !block && INLINE.has(tag);
    hasEnded = false;
    if (tag === 'dialog' && get('open') === null) flags |= HIDDEN;
    if (STRIKING.has(tag)) flags |= STRUCK;
    if (tag === 'button') flags |= CONTROL;
    if (tag === 'sup') flags |= RAISED;
    if (/^(?:b|strong|big)$/.test(tag) || (tag === 'font' && /[4-7]/.test(get('size') ?? ''))) flags |= BOLD;
    if (tag === 'pre') flags |= KEEPS_BREAKS;
    if (tag === 'a' && get('href') !== null) {
      flags |= LINK;
      link = get('href');
      // A link that begins with a picture is a card, whatever its style sheet calls it.
      if (beginsWithPicture(sight, element)) block = true;
    }
    if (tag === 'svg' || (ICONS.has(tag) && !sight.firstChild(element))) icon = iconOf(sight, element, tag);
    if (HEADS.has(tag)) out.heads.push(element);
    else if (tag === 'br') endLine();
    else if (tag === 'time') out.times.push({ element, line: lines.length });
    else if ((tag === 'img' || isPictured) && !(flags & HIDDEN))
      out.images.push({ element, box, line: lines.length, link });
    const inner = tag === 'iframe' && !(flags & HIDDEN) && frames-- > 0 ? insideOf(element) : null;
    if (inner) block = true;
    else if (tag === 'template' && around && get('shadowrootmode') !== null) {
      // A shadow root as it is written in a stored page; the rest of its host's children come by its slots.
      const content = sight.templateContent(element);
      if (!content) return;
      tree = { host: around.element, outer: tree };
      around.next = null;
      around.rest = null;
      stack.push({ ...around, next: sight.firstChild(content), rest: null, tree, opened: false });
      return;
    } else if (SILENT.has(tag)) return;

    if (block) {
      endLine();
      // A page's own elements are named like its classes.
      if (tag.includes('-')) hint = `${hintOf(tag)} ${hint}`.trim();
      if (/^h[1-6]$/.test(tag)) level = Number(tag[1]);
      if (level === 1 && out.title < 0) out.title = lines.length;
      // The text of a heading that is a button is a heading; that of other buttons is no part of the advert.
      if (level) flags &= ~CONTROL;
      boxes.push({ tag, parent: box, from: lines.length, to: lines.length, hint, ...(level ? { level } : {}) });
      box = boxes.length - 1;
    }
    const frame: Frame = { element, next: null, rest: null, tree, flags, box, opened: block, link };
    const shadow = inner ?? sight.shadow(element);
    if (shadow) {
      frame.next = sight.firstChild(shadow);
      if (!inner) frame.tree = { host: element, outer: tree };
    } else {
      const assigned = tag === 'slot' && tree ? slotted(sight, tree.host, get('name') ?? '') : [];
      if (assigned.length > 0) {
        frame.rest = assigned;
        frame.next = assigned.shift()!;
        frame.tree = tree!.outer;
      } else frame.next = sight.firstChild(element);
    }
    stack.push(frame);
  };

  /** The document inside a frame that is seen and of this page's origin, or null. */
  const insideOf = (element: Element): Node | null => {
    const inside = sight.shown(element) ? sight.frameDocument(element) : null;
    const address = sight.attribute(element, 'src') ?? '';
    if (!inside && /^(?:https?:)?\/\//.test(address) && out.unread.length < UNREAD_MOST && sight.shown(element))
      out.unread.push(address);
    return inside;
  };

  if (from) open(from);
  for (let frame = stack.at(-1); frame; frame = stack.at(-1)) {
    const node = frame.next;
    if (node === null || out.nodes >= most) {
      if (node) out.cut = true;
      if (frame.opened) {
        endLine();
        boxes[frame.box]!.to = lines.length;
      }
      stack.pop();
      hasEnded = !frame.opened;
      // What a button or link shows is its own.
      if (frame.flags & (CONTROL | LINK)) icon = '';
    } else {
      out.nodes++;
      frame.next = frame.rest ? (frame.rest.shift() ?? null) : sight.nextSibling(node);
      const type = sight.nodeType(node);
      if (type === 3) {
        hasEnded = false;
        say(sight.data(node), frame);
      } else if (type === 1) open(node as Element, frame);
    }
  }
  return out;
}

/** An amount in pieces (a sign, the whole, the cents), and marks between two texts. */
function isOneText(before: string, after: string, isItem: boolean): boolean {
  const [last, next] = [before.trim(), after.trim()];
  // White space between the two is all that a line needs, but not a row of items.
  if (!isItem && (!before.endsWith(last) || !after.startsWith(next))) return true;
  if (/^[^\p{L}\p{N}\p{Sc}]+$/u.test(next) || /[^\p{L}\p{N}\p{Sc}.,!?)%\]"']$/u.test(last)) return true;
  if (/\d[.,]?$/.test(last)) return /^(?:[.,:]|\d\d$|\p{Sc}|[A-Z]{3}(?![a-z])|kr|z\u0142|K\u010d|Ft|k$)/u.test(next);
  return /(?:\p{Sc}|(?<![A-Z])[A-Z]{3}|kr\.?|Fr\.?)$/u.test(last) && /^\d/.test(next);
}
