import type { ComponentChildren } from 'preact';

interface Props {
  heading: string;
  children: ComponentChildren;
}

/** A state without an audit: what is so, and what to do. */
export function Notice({ heading, children }: Props) {
  return (
    <div class="notice">
      <h1>{heading}</h1>
      {children}
    </div>
  );
}
