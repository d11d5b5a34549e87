import { localText } from '../../pack/local-text';
import type { Pack } from '../../pack/schema/index';
import type { ShelvedPack } from '../../session/packs';
import { workbenchTexts } from '../../text/catalogue/workbench';
import { Disclosure } from '../panel/Disclosure';
import { langOf, shown } from '../shown';
import { IssueList } from './IssueList';
import { Labels } from './Labels';

const texts = workbenchTexts.shelf;

interface Props {
  pack: ShelvedPack;
  onSwitch: (id: string, on: boolean) => void;
  onRemove: (id: string) => void;
}

/** One pack on the shelf: what it is, whether it speaks, and how to take it off again. */
export function PackRow({ pack: shelved, onSwitch, onRemove }: Props) {
  const { id, edition, shipped, on, installedAt, pack, issues } = shelved;
  const title = pack ? shown(localText(pack.about.title, pack.about.language), 160) : id;
  return (
    <li class="pack" data-pack-id={id} data-on={String(on)}>
      <h3 class="pack-title" lang={langOf(pack?.about.language)} dir="auto">
        {title}
      </h3>
      <Labels
        texts={[
          texts.edition(edition),
          texts.unsealed,
          pack?.about.demo && texts.demo,
          shipped ? texts.shipped : installedAt !== null && texts.installed(installedAt.slice(0, 10)),
        ]}
      />
      {pack ? <PackText pack={pack} /> : <p>{shipped ? texts.missing : texts.unreadable}</p>}
      {issues.length > 0 && <IssueList issues={issues} />}
      <div class="pack-actions">
        {pack && (
          <label class="switch">
            <input type="checkbox" checked={on} onChange={(event) => onSwitch(id, event.currentTarget.checked)} />
            <span>
              {texts.onShort}
              <span class="unseen">: {title}</span>
            </span>
          </label>
        )}
        {!shipped && (
          <button type="button" class="button plain" data-part="remove" onClick={() => onRemove(id)}>
            {texts.remove}
            <span class="unseen"> {title}</span>
          </button>
        )}
      </div>
    </li>
  );
}

function PackText({ pack }: { pack: Pack }) {
  const { about } = pack;
  const lang = langOf(about.language);
  const models = (pack.models?.length ?? 0) + (pack.types?.length ?? 0);
  const holds = texts.holds(models, pack.serials?.runs.first.length ?? 0);
  return (
    <>
      <p>
        {texts.speaksOf(shown(localText(about.covers.thing, about.language), 120))}
        {holds !== '' && ` (${holds})`}
      </p>
      <Disclosure label={texts.note} part="about-pack">
        {about.note && (
          <p lang={lang} dir="auto">
            {shown(localText(about.note, about.language))}
          </p>
        )}
        {about.keepers && about.keepers.length > 0 && (
          <p>{texts.keptBy(shown(about.keepers.map(({ name }) => name).join(', ')))}</p>
        )}
        <p>{texts.licence(shown(about.licence))}</p>
        <p class="soft">{texts.unsealedExplain}</p>
      </Disclosure>
    </>
  );
}
