import type { ComponentChildren } from 'preact';
import { type PackAbout, type PackCard, titleOf } from '../../session/pack-card';
import { originOf } from '../../session/pack-origin';
import { isOver } from '../../sharing/subscribe/against-known';
import { followTexts } from '../../text/catalogue/follow';
import { originTexts } from '../../text/catalogue/origin';
import { workbenchTexts } from '../../text/catalogue/workbench';
import { Disclosure } from '../panel/Disclosure';
import { langOf, shown } from '../shown';
import { IssueList } from './IssueList';
import { Labels } from './Labels';

const texts = workbenchTexts.shelf;

interface Props {
  pack: PackCard;
  onSwitch: (id: string, on: boolean) => void;
  onRemove: (id: string) => void;
  /** Where it is followed it is said there whether its time is over. */
  isFollowed?: boolean;
  /** Where it is followed, if it is, and what else can be done with it. */
  children?: ComponentChildren;
}

/** One pack on the shelf: what it is, whether it speaks, and how to take it off again. */
export function PackRow({ pack, onSwitch, onRemove, isFollowed = false, children }: Props) {
  const { id, edition, shipped, on, installedAt, about, issues } = pack;
  const title = shown(titleOf(pack), 160);
  return (
    <li class="pack" data-pack-id={id} data-on={String(on)}>
      <h3 class="pack-title" lang={langOf(about?.language)} dir="auto">
        {title}
      </h3>
      <Labels
        texts={[
          texts.edition(edition),
          originOf(pack),
          about?.demo && originTexts.demo,
          installedAt !== null && texts.installed(installedAt.slice(0, 10)),
        ]}
      />
      {about ? <About pack={pack} about={about} /> : <p>{shipped ? texts.missing : texts.unreadable}</p>}
      {!isFollowed && isOver(pack.expires, new Date().toISOString().slice(0, 10)) && (
        <p class="trouble" data-part="over">
          {followTexts.over(pack.expires ?? '')}
        </p>
      )}
      {issues.length > 0 && <IssueList issues={issues} />}
      <div class="pack-actions">
        {about && (
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
      {children}
    </li>
  );
}

function About({ pack: { shipped, sealedBy }, about }: { pack: PackCard; about: PackAbout }) {
  const holds = texts.holds(about.models, about.runs);
  return (
    <>
      <p>
        {texts.speaksOf(shown(about.thing, 120))}
        {holds !== '' && ` (${holds})`}
      </p>
      <Disclosure label={texts.note} part="about-pack">
        {about.note !== null && (
          <p lang={langOf(about.language)} dir="auto">
            {shown(about.note)}
          </p>
        )}
        {about.keepers.length > 0 && <p>{texts.keptBy(shown(about.keepers.join(', ')))}</p>}
        <p>{texts.licence(shown(about.licence))}</p>
        {!shipped && <p class="soft">{sealedBy === null ? originTexts.unsealedExplain : originTexts.sealedExplain}</p>}
      </Disclosure>
    </>
  );
}
