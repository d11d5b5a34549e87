/** Questions to the layout, at most. They come after the walk, in one go, so that they cost one style pass. */
const SHOWN_MOST = 30_000;
const STYLES_MOST = 3000;
const VISIBILITY = { visibilityProperty: true };

/** What a layout is asked about the page; see `Sight`. */
export interface Layout {
  shown(element: Element): boolean;
  style(element: Element, property: string): string;
}

/** How to go up from an element: its parent where that is an element, else null. */
interface Upwards {
  around(element: Element): Element | null;
  tag(element: Element): string;
}

/** Where nobody can say what is seen. */
export const NO_LAYOUT: Layout = { shown: () => true, style: () => '' };

/** Asks a browser, about each element once. `isVisible` is the browser's `checkVisibility`. */
export function layoutOf(
  isVisible: (element: Element, options: typeof VISIBILITY) => boolean,
  { around, tag }: Upwards,
): Layout {
  const answers = new Map<Element, boolean>();
  const folded = new Map<Element, boolean>();
  let asked = 0;
  let styled = 0;

  const style = (of: Element, property: string): string => {
    if (++styled > STYLES_MOST) return '';
    return globalThis.getComputedStyle(of).getPropertyValue(property);
  };

  /** What a closed <details> holds is one press away, so it counts as shown. */
  const isFoldedAway = (of: Element): boolean => {
    const passed: Element[] = [];
    let answer = false;
    for (let at: Element | null = of; at; at = around(at)) {
      const known: boolean | undefined = folded.get(at) ?? (tag(at) === 'details' || undefined);
      if (known !== undefined) {
        answer = known;
        break;
      }
      passed.push(at);
    }
    for (const one of passed) folded.set(one, answer);
    return answer;
  };

  /** An element without a box of its own (display: contents, as slots are) shows what it holds where the one around it is shown. */
  const isBoxless = (of: Element): boolean =>
    style(of, 'display') === 'contents' && style(of, 'visibility') === 'visible';

  /** Of an element that has no box or is not visible. What is hidden hides all in it, so that one style is enough. */
  const isShownAfterAll = (of: Element): boolean => {
    if (isFoldedAway(of)) return true;
    const hidden = [of];
    let shown = true;
    for (let at = around(of); at; at = around(at)) {
      const known = answers.get(at);
      shown = known ?? isVisible(at, VISIBILITY);
      if (known === undefined && shown) answers.set(at, true);
      if (known !== undefined || shown) break;
      hidden.push(at);
      shown = true;
    }
    // From the outside to the inside.
    for (let index = hidden.length - 1; index >= 0; index--) {
      shown &&= isBoxless(hidden[index]!);
      answers.set(hidden[index]!, shown);
    }
    return shown;
  };

  return {
    style,
    shown(of) {
      const known = answers.get(of);
      if (known !== undefined) return known;
      if (++asked > SHOWN_MOST) return true;
      const answer = isVisible(of, VISIBILITY) || isShownAfterAll(of);
      answers.set(of, answer);
      return answer;
    },
  };
}
