import { workbenchTexts } from '../../text/catalogue/workbench';
import type { BenchTrouble } from './trouble';

/** Says at once, to everybody, what could not be done and what to do about it. */
export function TroubleNote({ trouble }: { trouble: BenchTrouble | null }) {
  return (
    trouble && (
      <p role="alert" class="trouble" data-part="trouble">
        {workbenchTexts.troubles[trouble]}
      </p>
    )
  );
}
