import type { ComponentChildren } from 'preact';

/** A line among the parts that are folded away, which has nothing more to unfold. */
export function IndexLine({ name, children }: { name: string; children: ComponentChildren }) {
  return (
    <div class="index-line">
      <h2 class="index-name">{name}</h2> <span class="soft">{children}</span>
    </div>
  );
}
