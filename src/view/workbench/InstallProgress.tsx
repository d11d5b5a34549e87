import { workbenchTexts } from '../../text/catalogue/workbench';
import { shown } from '../shown';
import type { InstallOutcome } from './Installer';

const texts = workbenchTexts.install;

/** Bytes; what is smaller is read before anybody could follow its numbers. */
const LARGE = 5_000_000;

/** While files are read and checked: how far that has come, and the way to stop it. */
export function InstallProgress({ outcome, onCancel }: { outcome: InstallOutcome; onCancel: () => void }) {
  const words = wordsFor(outcome);
  return (
    <div class="progress" data-part="install-progress" data-state={outcome.state}>
      <p role="status">{words}</p>
      {words !== null && (
        <>
          {outcome.state === 'reading' ? (
            <progress aria-label={texts.progress} value={outcome.done} max={Math.max(outcome.all, 1)} />
          ) : (
            <progress aria-label={texts.progress} />
          )}
          <button type="button" class="button plain" data-part="cancel-install" onClick={onCancel}>
            {texts.cancel}
          </button>
        </>
      )}
    </div>
  );
}

function wordsFor(outcome: InstallOutcome): string | null {
  const megabytes = (bytes: number) => Math.round(bytes / 1e6);
  switch (outcome.state) {
    case 'reading': {
      const { file, done, all } = outcome;
      const name = shown(file, 120);
      return all < LARGE ? texts.readingSmall(name) : texts.reading(name, megabytes(done), megabytes(all));
    }
    case 'checking':
      return texts.checking(shown(outcome.file, 120));
    case 'keeping':
      return texts.keeping;
    default:
      return null;
  }
}
