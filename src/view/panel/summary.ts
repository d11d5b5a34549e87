import type { Audit, Finding, Standing } from '../../audit/types';
import { isStanding } from '../../session/standing-caution';
import { panelTexts } from '../../text/catalogue/panel';
import { hasPricePart } from './PricePart';

const texts = panelTexts.summary;

/** The most things "not shown yet" that are put before a person at once: the ones that matter most come first. */
export const MOST_UNPROVED = 3;

/** The findings of one standing, as they are shown. Where the price stands is shown by itself. */
export function shownFindings(audit: Audit, standing: Standing): Finding[] {
  const findings = audit.findings.filter(
    (finding) => finding.standing === standing && !(finding.check === 'price' && hasPricePart(audit)),
  );
  return standing === 'unproved' ? findings.slice(0, MOST_UNPROVED) : findings;
}

/** An audit in one to four plain sentences. */
export function summaryOf(audit: Audit): string {
  const kind = audit.kind === 'none' || audit.kind === 'list' ? '' : texts.kinds[audit.kind];
  const price = priceSentence(audit);
  return [kind, standingSentence(audit, kind !== '' || price !== ''), price].filter(Boolean).join(' ');
}

/** @param more something else is said, so that nothing found needs no words */
function standingSentence(audit: Audit, more: boolean): string {
  // What holds for every such advert is no news of this one.
  const count = (standing: Standing) => shownFindings(audit, standing).filter((each) => !isStanding(each)).length;
  const [disproved, unproved, cautions] = [count('disproved'), count('unproved'), count('caution')];
  if (disproved > 0)
    return unproved > 0 ? `${texts.disproved(disproved)} ${texts.alsoUnproved(unproved)}` : texts.disproved(disproved);
  if (unproved > 0) return texts.onlyUnproved(unproved);
  if (cautions > 0) return texts.cautions(cautions);
  if (count('agrees') > 0) return texts.agrees;
  return more ? '' : texts.nothing;
}

/** Of a price that isn't about the usual one. */
function priceSentence(audit: Audit): string {
  const { standing } = audit.price;
  if (!hasPricePart(audit) || !audit.findings.some(({ check }) => check === 'price')) return '';
  return standing === 'within' || standing === 'no-band' || standing === 'not-comparable' ? '' : texts.price[standing];
}
