import type { Answer } from '../../session/answer';
import { draftRoomTexts as texts } from '../../text/catalogue/draft-room';
import { workbenchTexts } from '../../text/catalogue/workbench';
import { ORDER } from '../panel/AuditView';
import { FindingGroup } from '../panel/FindingGroup';
import { PacksSpoke } from '../panel/PacksSpoke';
import { PricePart } from '../panel/PricePart';
import { SerialPart } from '../panel/SerialPart';
import { shownFindings, summaryOf } from '../panel/summary';

/** What the packs say of a draft, in the same parts as beside a page. */
export function DraftAudit({ answer, blank }: { answer: Answer | null; blank: boolean }) {
  return (
    <section class="draft-audit" aria-labelledby="draft-audit" data-part="draft-audit">
      <h2 id="draft-audit">{texts.audit}</h2>
      {blank ? <p>{texts.blank}</p> : answer ? <Answered answer={answer} /> : <p>{texts.auditing}</p>}
    </section>
  );
}

function Answered({ answer }: { answer: Answer }) {
  if (!answer.ok) return <p data-part="broken">{workbenchTexts.troubles.broken}</p>;
  const { audit, listing, words } = answer;
  if (audit.packs.length === 0) return <p data-part="no-pack">{texts.noPack}</p>;
  if (audit.kind === 'none' || audit.kind === 'list') return <p>{texts.none}</p>;
  const forSale = audit.kind === 'item' || audit.kind === 'lot';
  return (
    <>
      <p class="summary" role="status" data-part="summary">
        {summaryOf(audit)}
      </p>
      {ORDER.map((standing) => (
        <FindingGroup
          key={standing}
          standing={standing}
          findings={shownFindings(audit, standing)}
          language={listing.language}
          words={words}
        />
      ))}
      {forSale && <PricePart audit={audit} />}
      {forSale && <SerialPart audit={audit} words={words} />}
      <PacksSpoke audit={audit} words={words} />
    </>
  );
}
