/** Short facts about a pack, as stamped labels; empty ones are left out. */
export function Labels({ texts }: { texts: readonly (string | false | undefined)[] }) {
  return (
    <p class="labels">
      {texts.filter(Boolean).map((text) => (
        <span key={text as string}>{text}</span>
      ))}
    </p>
  );
}
