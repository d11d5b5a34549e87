import { findingTexts } from '../../text/catalogue/findings';
import type { AuditCase } from '../case';
import { isAsserted } from '../claims-held';
import { sourceOf } from '../source-of';
import type { Finding } from '../types';
import { saidEach } from '../words';

const texts = findingTexts.rarity;

/** Numbers made are estimates: a stated number is held against them only where they are far apart. */
const FAR_MORE = 2;

/** "Rare" of one made by the million, "only 200 ever made" of one made by the thousand. */
export function rarity({ reading, claimed, knowledge }: AuditCase): Finding[] {
  const words = reading.wordings.filter((claim) => isAsserted(claim) && claim.stance === 'says');
  return claimed.flatMap((model) => {
    const number = model.def.number;
    if (number === undefined) return [];
    const wrong = words.filter(
      ({ entry }) => entry.means && 'madeUnder' in entry.means && number >= entry.means.madeUnder,
    );
    const counts = reading.counts.filter(
      (claim) => isAsserted(claim) && claim.stance === 'says' && number >= FAR_MORE * claim.most,
    );
    const firmly = wrong.filter(({ entry }) => entry.use !== 'loose');
    const said = counts.length + firmly.length > 0 ? [...counts, ...firmly] : wrong;
    const first = said[0];
    if (!first) return [];
    const firm = said !== wrong;
    const shown = number.toLocaleString('en-GB');
    const source = sourceOf(knowledge, model.pack, model.def.source);
    return [
      {
        id: `rarity:${model.ref}`,
        check: 'rarity',
        standing: firm ? 'disproved' : 'caution',
        attribute: null,
        said: saidEach(said),
        known: [{ pack: model.pack, entry: model.id, text: texts.known(model.label, shown), source }],
        text: (firm ? texts.disproved : texts.caution)(first.quote, model.label, shown),
        ask: null,
      } satisfies Finding,
    ];
  });
}
