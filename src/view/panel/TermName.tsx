import type { Term } from '../../session/words';
import { shown } from '../shown';

/** The name of a property; where the pack explains it, in one line, on demand. */
export function TermName({ name, term }: { name: string; term: Term | undefined }) {
  if (!term?.explain) return <>{shown(name, 80)}</>;
  return (
    <details class="term-name">
      <summary>{shown(name, 80)}</summary>
      <p>{shown(term.explain)}</p>
    </details>
  );
}
