import { useEffect, useRef, useState } from 'preact/hooks';
import type { Earlier, Installed, InstallStep, Refused } from '../../session/install';
import { workbenchTexts } from '../../text/catalogue/workbench';
import { shown } from '../shown';
import { HandedOver } from './HandedOver';
import { InstallProgress } from './InstallProgress';
import { IssueList } from './IssueList';

const texts = workbenchTexts.install;

/** What came of the files that were chosen last; a trouble of storage is told elsewhere. */
export type InstallOutcome = { state: 'none' } | { state: 'cancelled' } | Exclude<InstallStep, { state: 'trouble' }>;

/** Files to install; or those that were chosen last, although they hold earlier editions than were here. */
export type FilesChosen = File[] | 'the-same-going-back';

interface Props {
  outcome: InstallOutcome;
  onFiles: (files: FilesChosen) => void;
  onCancel: () => void;
}

/** Pack files are chosen or dropped here; bad ones say what is wrong with them. */
export function Installer({ outcome, onFiles, onCancel }: Props) {
  const part = useRef<HTMLElement>(null);
  const first = useRef(outcome);
  // A pack more on the shelf above pushes this part, which has the focus and says what came of it, out of sight.
  useEffect(() => {
    if (outcome !== first.current) part.current?.scrollIntoView?.({ block: 'nearest' });
  }, [outcome]);
  return (
    <section class="room-part" aria-labelledby="install" ref={part}>
      <h2 id="install">{texts.heading}</h2>
      <p>{texts.text}</p>
      <FileDrop onFiles={onFiles} />
      <InstallProgress outcome={outcome} onCancel={onCancel} />
      <div role="status" data-part="install-outcome">
        {outcome.state === 'installed' && <Done packs={outcome.packs} />}
        {outcome.state === 'refused' && <p>{texts.refused(outcome.refused.length)}</p>}
        {outcome.state === 'cancelled' && <p>{texts.cancelled}</p>}
      </div>
      {outcome.state === 'going-back' && <GoingBack packs={outcome.packs} onFiles={onFiles} onCancel={onCancel} />}
      {outcome.state === 'refused' && outcome.refused.map((each) => <RefusedFile key={each.file} refused={each} />)}
    </section>
  );
}

function FileDrop({ onFiles }: { onFiles: (files: File[]) => void }) {
  const [over, setOver] = useState(false);
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: dropping is a second way; the labelled input is the first
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
  );
}

function Done({ packs }: { packs: readonly Installed[] }) {
  return (
    <>
      <p>{texts.done(packs.map(nameOf).join(', '))}</p>
      {packs.map(({ id, title, handedOver }) => (
        <HandedOver key={id} title={title} changes={handedOver} />
      ))}
    </>
  );
}

function GoingBack({ packs, onFiles, onCancel }: Omit<Props, 'outcome'> & { packs: readonly Earlier[] }) {
  return (
    <div class="trouble" data-part="going-back">
      {packs.map(({ title, edition, after }) => (
        <p key={title}>{texts.earlier(shown(title, 160), edition, after)}</p>
      ))}
      <p class="row">
        <button type="button" class="button" data-part="go-back" onClick={() => onFiles('the-same-going-back')}>
          {texts.goBack(packs.length)}
        </button>{' '}
        <button type="button" class="button plain" data-part="leave-it" onClick={onCancel}>
          {texts.leaveIt}
        </button>
      </p>
    </div>
  );
}

function nameOf({ title, edition, replaces }: Installed): string {
  const name = shown(title, 160);
  return replaces ? texts.replaced(name, replaces.edition, edition, replaces.otherText) : texts.fresh(name, edition);
}

function RefusedFile({ refused: { file, issues } }: { refused: Refused }) {
  return (
    <section class="refused" data-part="refused-file">
      <h3 dir="auto">{texts.issuesIn(shown(file, 120), issues.length)}</h3>
      <IssueList issues={issues} />
    </section>
  );
}
