import { useEffect, useRef } from 'preact/hooks';

export interface FocusKept {
  /** The part of the page whose rows come and go. */
  part: { current: HTMLElement | null };
  /** To be called before something is done that takes what was pressed away. */
  pressed: () => void;
}

/**
 * Whoever works by keyboard begins at the top again when the button that he pressed is gone. The way back ("undo") takes
 * the focus then, or the part's heading (with `tabIndex` -1) where there is none.
 */
export function useFocusKept(): FocusKept {
  const part = useRef<HTMLElement>(null);
  const last = useRef<Element | null>(null);
  useEffect(() => {
    if (last.current === null || last.current.isConnected) return;
    const heading = part.current?.querySelector('h2');
    // The row may go before the way back comes: until then the heading has the focus, unless the user has moved on.
    if (document.activeElement !== document.body && document.activeElement !== heading) return;
    const back = part.current?.querySelector<HTMLElement>('[data-part^="undo"]');
    if (back) last.current = null;
    (back ?? heading)?.focus();
  });
  return {
    part,
    pressed: () => {
      last.current = document.activeElement;
    },
  };
}
