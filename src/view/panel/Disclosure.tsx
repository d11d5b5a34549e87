import type { ComponentChildren } from 'preact';

/** Something more, for whoever wants it: opened by click, Enter or space. */
export function Disclosure({ label, part, children }: { label: string; part: string; children: ComponentChildren }) {
  return (
    <details class="more" data-part={part}>
      <summary>{label}</summary>
      <div class="more-body">{children}</div>
    </details>
  );
}
