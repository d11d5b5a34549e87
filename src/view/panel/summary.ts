import type { Audit, Standing } from '../../audit/types';
import { panelTexts } from '../../text/catalogue/panel';

const texts = panelTexts.summary;

/** The most things "not shown yet" that are put before a person at once: the ones that matter most come first. */
export const MOST_UNPROVED = 3;

/** The findings of one standing, as they are shown. */
export function shownFindings(audit: Audit, standing: Standing) {
  const findings = audit.findings.filter((finding) => finding.standing === standing);
  return standing === 'unproved' ? findings.slice(0, MOST_UNPROVED) : findings;
}

/** An audit in one to three plain sentences. */
export function summaryOf(audit: Audit): string {
  const kind = audit.kind === 'none' || audit.kind === 'list' ? '' : texts.kinds[audit.kind];
  return [kind, standingSentence(audit, kind !== '')].filter(Boolean).join(' ');
}

function standingSentence(audit: Audit, otherKind: boolean): string {
  const count = (standing: Standing) => shownFindings(audit, standing).length;
  const [disproved, unproved, cautions] = [count('disproved'), count('unproved'), count('caution')];
  if (disproved > 0)
    return unproved > 0 ? `${texts.disproved(disproved)} ${texts.alsoUnproved(unproved)}` : texts.disproved(disproved);
  if (unproved > 0) return texts.onlyUnproved(unproved);
  if (cautions > 0) return texts.cautions(cautions);
  if (count('agrees') > 0) return texts.agrees;
  return otherKind ? '' : texts.nothing;
}
