import type { ComponentChildren } from 'preact';

interface Props {
  label: ComponentChildren;
  /** What is inside, said beside the label. */
  inside?: ComponentChildren;
  part: string;
  /** As a row of its own across the whole width: a part of the page that is folded away. */
  row?: boolean;
  children: ComponentChildren;
}

/** Something more, for whoever wants it: opened by click, Enter or space. */
export function Disclosure({ label, inside, part, row = false, children }: Props) {
  return (
    <details class={row ? 'more row' : 'more'} data-part={part}>
      <summary>
        <span class="more-line">
          <span class="more-name">{label}</span>
          {inside !== undefined && <span class="soft"> {inside}</span>}
        </span>
      </summary>
      <div class="more-body">{children}</div>
    </details>
  );
}
