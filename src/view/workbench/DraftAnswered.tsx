import type { Standing } from '../../audit/types';
import type { Answer } from '../../session/answer';
import type { SeenValue } from '../../session/seen';
import { draftRoomTexts as texts } from '../../text/catalogue/draft-room';
import { likelyTexts } from '../../text/catalogue/likely';
import { workbenchTexts } from '../../text/catalogue/workbench';
import { likelyAdds } from '../likely';
import { FIRST, LAST } from '../panel/AuditView';
import { FindingGroup } from '../panel/FindingGroup';
import { LikelyPart } from '../panel/LikelyPart';
import { NextPart } from '../panel/NextPart';
import { PacksSpoke } from '../panel/PacksSpoke';
import { PriceLine, PricePart } from '../panel/PricePart';
import { SerialPart } from '../panel/SerialPart';
import { shownFindings, summaryOf } from '../panel/summary';

interface Props {
  answer: Answer;
  /** More was seen since, and the next audit is on its way. */
  pending: boolean;
  isPrivate: boolean;
  onSaw: (attribute: string, value: SeenValue) => void;
  onTakeBack: (attribute: string) => void;
}

/** What the packs say of a draft, once they have said it, in the same parts as beside a page. */
export function DraftAnswered({ answer, isPrivate, ...rest }: Props) {
  if (!answer.ok) return <p data-part="broken">{workbenchTexts.troubles.broken}</p>;
  const { audit, listing, words, seen, kind, place } = answer;
  if (audit.packs.length === 0) return <p data-part="no-pack">{texts.noPack}</p>;
  if (audit.kind === 'none' || audit.kind === 'list') return <p>{texts.none}</p>;
  const forSale = audit.kind === 'item' || audit.kind === 'lot';
  const group = (standing: Standing) => (
    <FindingGroup
      key={standing}
      standing={standing}
      findings={shownFindings(audit, standing)}
      language={listing.language}
      words={words}
      asks
    />
  );
  return (
    <>
      <p class="summary" role="status" data-part="summary">
        {summaryOf(audit)}
      </p>
      {FIRST.map(group)}
      {likelyAdds(audit, seen.length) && (
        <LikelyPart audit={audit} words={words} kind={kind} folded beside={{ answer, own: [], asOf: '', save: null }} />
      )}
      {forSale && <PricePart audit={audit} words={words} />}
      <NextPart
        next={audit.nextEvidence}
        {...{ seen, words, ...rest }}
        keptNote={isPrivate ? null : likelyTexts.settle.keptDraft}
      />
      {LAST.map(group)}
      {forSale && <PriceLine audit={audit} />}
      {forSale && <SerialPart audit={audit} words={words} place={place} />}
      <PacksSpoke audit={audit} words={words} />
    </>
  );
}
