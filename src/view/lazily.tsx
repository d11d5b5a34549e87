import { type ComponentChild, h } from 'preact';
import { useEffect, useState } from 'preact/hooks';

export interface Lazily<Props> {
  (props: Props): ComponentChild;
  /** Fetched; what is shown after that shows at once. */
  fetched: () => Promise<void>;
}

/**
 * A part of a page that is fetched when it is first shown, for what many visitors never come to. Until it is there,
 * something as large as it, or nothing, stands in its place. One that can't be fetched is the page's trouble, which hears of every rejection.
 */
export function lazily<Props extends object>(
  fetch: () => Promise<(props: Props) => ComponentChild>,
  before: ComponentChild = null,
): Lazily<Props> {
  let there: ((props: Props) => ComponentChild) | null = null;
  let coming: Promise<void> | null = null;
  const fetched = () => {
    coming ??= fetch().then((part) => {
      there = part;
    });
    return coming;
  };
  function Part(props: Props) {
    const [, again] = useState(there !== null);
    useEffect(() => {
      if (!there) void fetched().then(() => again(true));
    }, []);
    return there ? h(there as (props: object) => ComponentChild, props) : before;
  }
  return Object.assign(Part, { fetched });
}
