import { useState } from 'preact/hooks';
import type { Refused } from '../../session/install';
import { workbenchTexts } from '../../text/catalogue/workbench';
import { shown } from '../shown';
import { IssueList } from './IssueList';

const texts = workbenchTexts.install;

/** What came of the files that were chosen last. */
export type InstallOutcome =
  | { state: 'none' }
  | { state: 'checking' }
  | { state: 'installed'; names: string[] }
  | { state: 'refused'; refused: Refused[] };

interface Props {
  outcome: InstallOutcome;
  onFiles: (files: File[]) => void;
}

/** Pack files are chosen or dropped here; bad ones say what is wrong with them. */
export function Installer({ outcome, onFiles }: Props) {
  const [over, setOver] = useState(false);
  return (
    <section class="room-part" aria-labelledby="install">
      <h2 id="install">{texts.heading}</h2>
      <p>{texts.text}</p>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: dropping is a second way; the labelled input is the first */}
      <div
        class={over ? 'drop over' : 'drop'}
        data-part="drop"
        onDragOver={(event) => {
          event.preventDefault();
          setOver(true);
        }}
        onDragLeave={() => setOver(false)}
        onDrop={(event) => {
          event.preventDefault();
          setOver(false);
          onFiles([...(event.dataTransfer?.files ?? [])]);
        }}
      >
        <input
          id="pack-file"
          class="unseen file"
          type="file"
          accept=".json,application/json"
          multiple
          data-part="pack-file"
          onChange={(event) => {
            const files = [...(event.currentTarget.files ?? [])];
            // Emptied, so that the same file can be chosen again once it is mended.
            event.currentTarget.value = '';
            onFiles(files);
          }}
        />
        <label class="button" for="pack-file">
          {texts.choose}
        </label>
        <span class="soft">{texts.drop}</span>
      </div>
      <div role="status" data-part="install-outcome">
        {outcome.state === 'checking' && <p>{texts.checking}</p>}
        {outcome.state === 'installed' && <p>{texts.done(outcome.names.join(', '))}</p>}
        {outcome.state === 'refused' && <p>{texts.refused(outcome.refused.length)}</p>}
      </div>
      {outcome.state === 'refused' &&
        outcome.refused.map(({ file, issues }) => (
          <section class="refused" key={file} data-part="refused-file">
            <h3 dir="auto">{texts.issuesIn(shown(file, 120), issues.length)}</h3>
            <IssueList issues={issues} />
          </section>
        ))}
    </section>
  );
}
