import { weighed } from '../identify/grounds';
import type { Identified } from '../identify/identify';
import { posterior } from '../identify/posterior';
import { identifyTexts as texts } from '../text/catalogue/identify';
import type { AuditCase } from './case';
import { followsOf } from './follows';
import { groundOf, type Told } from './ground-words';
import type { Likely } from './types';

const MOST = 5;
const LEAST_SHARE = 0.01;
/** What weighs less than this is no ground worth telling, in bits. */
const LEAST_GROUND = 0.1;

/** Below this it isn't even likely (IPCC's scale, 2010). */
const LIKELY = 0.66;

/** It is likely by its number alone: without that it would not be. */
function restsOnSerial({ evidence, posterior: { shares } }: Identified, h: number): boolean {
  if (!evidence.serial || shares[h]! < LIKELY) return false;
  return posterior(evidence, { kind: 'serial' }).shares[h]! < LIKELY;
}

/** What it most likely is: at most five of at least one in a hundred, "none" always among them where it has that. */
export function likelyOf({ identified, reading, serial, answers, listing }: AuditCase): Likely[] {
  if (!identified) return [];
  const { evidence, posterior, order } = identified;
  const { hypotheses } = evidence.field;
  const { shares } = posterior;
  if (hypotheses.length < 2) return [];
  const none = hypotheses.length - 1;
  const shown = order.filter((h) => shares[h]! >= LEAST_SHARE).slice(0, MOST);
  if (shares[none]! >= LEAST_SHARE && !shown.includes(none)) shown[shown.length - 1] = none;
  // Each against the likeliest other one.
  const pairs = shown.map((own) => ({ own, rival: own === order[0] ? order[1]! : order[0]! }));
  const grounds = weighed(identified, pairs);
  const told: Told = {
    reading,
    evidence,
    serial: serial?.claim.quote ?? null,
    answers,
    byHand: listing.byHand === true,
  };
  return shown.map((h, i) => {
    const { model } = hypotheses[h]!;
    const pieces = grounds[i]!.flatMap((one) => groundOf(one, model, told) ?? []);
    return {
      model: model?.ref ?? null,
      label: model?.label ?? texts.none,
      kind: model ? (model.isType ? 'type' : 'model') : 'none',
      probability: shares[h]!,
      restsOn: i === 0 && restsOnSerial(identified, h) ? 'serial' : null,
      for: pieces.filter(({ bits }) => bits >= LEAST_GROUND),
      against: pieces.filter(({ bits }) => bits <= -LEAST_GROUND),
      follows: followsOf(model, evidence),
    };
  });
}
