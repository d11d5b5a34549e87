import type { RefObject } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

/**
 * Whoever works by keyboard begins at the top again when what he pressed is gone. Work that goes on step by step takes the
 * focus along: to what can be pressed next, as long as it was on what has gone or where this put it before.
 * @param next by step a selector in the part; a step without one leaves the focus where it is
 */
export function useStepFocus<Step extends string>(
  part: RefObject<HTMLElement | null>,
  step: Step,
  next: Partial<Record<Step, string>>,
): void {
  const before = useRef(step);
  const ours = useRef<Element | null>(null);
  useEffect(() => {
    if (before.current === step) return;
    before.current = step;
    const { activeElement } = document;
    if (activeElement !== document.body && activeElement !== null && activeElement !== ours.current) return;
    const selector = next[step];
    const to = selector === undefined ? null : (part.current?.querySelector<HTMLElement>(selector) ?? null);
    to?.focus();
    ours.current = to;
  });
}
