import { BOLD, type Box, CONTROL, LINK, RAISED, STRUCK } from '../types';
import { beginsWithPicture, type Slots, slotsOf } from './children';
import { AS_BLOCK, HIDDEN, HOLDS_ITEMS, KEEPS_BREAKS } from './flags';
import {
  BLOCK,
  BOLDENING,
  CUSTOM,
  HEAD,
  HEADING,
  HOST,
  ICON,
  INLINE,
  kindOf,
  NO_ITEM,
  PARTICULAR,
  SILENT,
  STRIKING,
} from './kinds';
import { Lining } from './lining';
import { hintOf, iconOf, namesOf } from './names';
import type { Sight } from './sight';
import { toldBy } from './told';
import { nothingWalked, type Walk } from './walked';

/** More nodes than any advert needs; what comes after is not read. */
const NODES_MOST = 400_000;
/** Nodes read between two pauses that may be made. */
const NODES_OF_A_STEP = 400;

/** A document's own frames and their frames. */
const FRAMES_MOST = 20;
const UNREAD_MOST = 10;

/** A dialog that waits: hidden from everybody as long as aria-hidden says so. Other aria-hidden text is seen. */
const WAITING = /\b(?:dialog|modal|popup|drawer|tooltip|menu)\b/i;

/** A shadow tree: its host's own children are seen where it has slots for them, and nowhere else. */
interface Tree {
  host: Element;
  outer: Tree | null;
  /** The host's children by the name of the slot that shows them, once a slot has asked. */
  slots: Slots | null;
}

/** An element whose children are being read. */
interface Frame {
  element: Element;
  /** What the page calls it; null where that was not asked yet. */
  names: string | null;
  next: Node | null;
  /** What comes after `next`, where that is not its sibling: the nodes of a slot, the last one first. */
  rest: Node[] | null;
  tree: Tree | null;
  flags: number;
  box: number;
  opened: boolean;
  link: string | null;
}

/**
 * Walks once over `from` and all in it, at most `most` nodes, without recursion; linear in its nodes. May be left alone
 * at each yield, and gone on with later.
 */
export function* walk(
  sight: Sight,
  from: Element | null = sight.root,
  most: number = NODES_MOST,
): Generator<void, Walk> {
  const walker = new Walker(sight, most);
  if (from) walker.open(from, null);
  while (walker.goOn(NODES_OF_A_STEP)) yield;
  return walker.out;
}

class Walker {
  readonly out: Walk;
  readonly #lining = new Lining();
  readonly #stack: Frame[] = [];
  readonly #sight: Sight;
  readonly #most: number;
  #frames = FRAMES_MOST;

  constructor(sight: Sight, most: number) {
    this.#sight = sight;
    this.#most = most;
    this.out = nothingWalked(this.#lining.lines);
  }

  /** Reads so many nodes more. Says whether there are others. */
  goOn(count: number): boolean {
    const sight = this.#sight;
    const stack = this.#stack;
    const { out } = this;
    const lining = this.#lining;
    const end = Math.min(this.#most, out.nodes + count);
    for (let frame = stack[stack.length - 1]; frame; frame = stack[stack.length - 1]) {
      const node = frame.next;
      if (node === null || out.nodes >= this.#most) {
        if (node !== null) out.cut = true;
        stack.pop();
        lining.end(frame.opened);
        if (frame.opened) out.boxes[frame.box]!.to = lining.lines.length;
        // What a button or link shows is its own.
        if (frame.flags & (CONTROL | LINK)) lining.icon = '';
      } else if (out.nodes >= end) return true;
      else {
        out.nodes++;
        frame.next = frame.rest ? (frame.rest.pop() ?? null) : sight.nextSibling(node);
        const type = sight.nodeType(node);
        if (type === 3) lining.say(sight.data(node), frame);
        else if (type === 1) this.open(node as Element, frame);
      }
    }
    return false;
  }

  /** An element begins: what it is, what its attributes say, and what there is to read inside. */
  open(element: Element, around: Frame | null): void {
    const sight = this.#sight;
    const { out } = this;
    const lining = this.#lining;
    const tag = sight.tag(element);
    const kind = kindOf(tag);
    if (tag === 'script') {
      this.#script(element);
      return;
    }

    let flags = around ? around.flags & ~HOLDS_ITEMS : 0;
    let box = around ? around.box : -1;
    let block = (kind & BLOCK) !== 0 || box < 0;
    let level = 0;
    let link = around ? around.link : null;
    /** What the page calls it, where it is a block by itself. */
    let hint = '';
    let names: string | null = '';
    let isDrawn = false;
    if (sight.hasAttributes(element)) {
      const its = sight.attributeNames(element);
      names = null;
      const told = toldBy(sight, element, its);
      flags |= told.flags;
      level = told.level;
      isDrawn = told.isDrawn;
      if (told.id !== '' && !out.ids.has(told.id)) out.ids.set(told.id, element);
      if (told.isScope) out.scopes.push(element);
      block ||= (flags & AS_BLOCK) !== 0;
      if (block) {
        hint = namesOf(sight, element, its);
        names = hint;
      }
      if (told.isWaiting && WAITING.test(`${tag} ${hint}`)) flags |= HIDDEN;
    }
    const isItem = around !== null && (around.flags & HOLDS_ITEMS) !== 0 && !block && !(kind & NO_ITEM);
    lining.begin(!block && (kind & INLINE) !== 0, isItem);
    if (kind & STRIKING) flags |= STRUCK;
    if (kind & BOLDENING) flags |= BOLD;

    if (kind & PARTICULAR) {
      if (tag === 'dialog' && sight.attribute(element, 'open') === null) flags |= HIDDEN;
      else if (tag === 'button') flags |= CONTROL;
      else if (tag === 'sup') flags |= RAISED;
      else if (tag === 'pre') flags |= KEEPS_BREAKS;
      else if (tag === 'font' && /[4-7]/.test(sight.attribute(element, 'size') ?? '')) flags |= BOLD;
      else if (tag === 'a') {
        const address = sight.attribute(element, 'href');
        if (address !== null) {
          flags |= LINK;
          link = address;
          // A link that begins with a picture is a card, whatever its style sheet calls it.
          if (beginsWithPicture(sight, element)) block = true;
        }
      }
    }
    if (tag === 'svg' || (kind & ICON && sight.firstChild(element) === null)) lining.icon = iconOf(sight, element, tag);
    if (kind & HEAD) out.heads.push(element);
    else if (tag === 'br') lining.break();
    else if (tag === 'time') out.times.push({ element, line: lining.lines.length });
    else if ((tag === 'img' || isDrawn) && !(flags & HIDDEN))
      out.images.push({ element, box, line: lining.lines.length, link });

    const inner = tag === 'iframe' && !(flags & HIDDEN) && this.#frames-- > 0 ? this.#insideOf(element) : null;
    if (inner) block = true;
    else if (kind & SILENT) {
      if (tag === 'template' && around) this.#written(element, around);
      return;
    }

    if (block) {
      lining.break();
      // A page's own elements are named like its classes.
      if (kind & CUSTOM) hint = `${hintOf(tag)} ${hint}`.trim();
      if (kind & HEADING) level = Number(tag[1]);
      if (level === 1 && out.title < 0) out.title = lining.lines.length;
      if (level) {
        // The text of a heading that is a button is a heading; that of other buttons is no part of the advert.
        flags &= ~CONTROL;
        // What stands before a heading is no icon of it.
        lining.icon = '';
      }
      const from = lining.lines.length;
      const made: Box = { tag, parent: box, from, to: from, hint };
      if (level) made.level = level;
      box = out.boxes.push(made) - 1;
    }
    this.#enter(element, kind, inner, {
      element,
      names,
      next: null,
      rest: null,
      tree: around ? around.tree : null,
      flags: flags & ~AS_BLOCK,
      box,
      opened: block,
      link,
    });
  }

  /** What is read inside an element: its children, or what it shows in their place. */
  #enter(element: Element, kind: number, inner: Node | null, frame: Frame): void {
    const sight = this.#sight;
    const shadow = inner ?? (kind & HOST ? sight.shadow(element) : null);
    if (shadow) {
      frame.next = sight.firstChild(shadow);
      if (!inner) frame.tree = { host: element, outer: frame.tree, slots: null };
    } else {
      frame.next = sight.firstChild(element);
      const { tree } = frame;
      if (tree && sight.tag(element) === 'slot') {
        tree.slots ??= slotsOf(sight, tree.host);
        const assigned = tree.slots.get(sight.attribute(element, 'name') ?? '');
        if (assigned) {
          frame.rest = [...assigned];
          frame.next = frame.rest.pop() ?? null;
          frame.tree = tree.outer;
        }
      }
    }
    this.#stack.push(frame);
  }

  #script(element: Element): void {
    const sight = this.#sight;
    if (/^\s*application\/ld\+json/i.test(sight.attribute(element, 'type') ?? '')) this.out.linkedData.push(element);
    else if (sight.attribute(element, 'src') === null) this.out.scripts.push(element);
  }

  /** A shadow root as it is written in a stored page; the rest of its host's children come by its slots. */
  #written(template: Element, host: Frame): void {
    const sight = this.#sight;
    if (sight.attribute(template, 'shadowrootmode') === null) return;
    const content = sight.templateContent(template);
    if (!content) return;
    host.next = null;
    host.rest = null;
    const tree = { host: host.element, outer: host.tree, slots: null };
    this.#stack.push({ ...host, next: sight.firstChild(content), tree, opened: false });
  }

  /** The document inside a frame that is seen and of this page's origin, or null. */
  #insideOf(element: Element): Node | null {
    const sight = this.#sight;
    const { unread } = this.out;
    const isShown = sight.shown(element);
    const inside = isShown ? sight.frameDocument(element) : null;
    const address = sight.attribute(element, 'src') ?? '';
    if (!inside && /^(?:https?:)?\/\//.test(address) && unread.length < UNREAD_MOST && isShown) unread.push(address);
    return inside;
  }
}
