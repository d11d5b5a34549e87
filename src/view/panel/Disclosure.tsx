import type { ComponentChildren } from 'preact';

interface Props {
  label: ComponentChildren;
  /** What is inside, said beside the label. */
  inside?: ComponentChildren;
  part: string;
  /** As a row of its own across the whole width, a part of the page that is folded away: the level of its heading. */
  row?: 'h2' | 'h3';
  /** Opened by the page itself, as soon as this turns true. */
  open?: boolean;
  /** Told whenever it is opened or closed. */
  onToggle?: () => void;
  children: ComponentChildren;
}

/** Something more, for whoever wants it: opened by click, Enter or space. */
export function Disclosure({ label, inside, part, row, open, onToggle, children }: Props) {
  const Name = row ?? 'span';
  return (
    <details class={row ? 'more row' : 'more'} data-part={part} open={open} onToggle={onToggle}>
      <summary>
        <span class="more-line">
          <Name class="more-name">{label}</Name>
          {inside !== undefined && <span class="soft"> {inside}</span>}
        </span>
      </summary>
      <div class="more-body">{children}</div>
    </details>
  );
}
