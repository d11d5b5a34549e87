import type { ComponentChildren } from 'preact';

/** A line among the parts that are folded away, which has nothing more to unfold. */
export function IndexLine({ name, children }: { name: string; children: ComponentChildren }) {
  return (
    <p class="index-line">
      <b class="index-name">{name}</b> <span class="soft">{children}</span>
    </p>
  );
}
