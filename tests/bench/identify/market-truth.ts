import { TRUST } from '../../../src/identify/assumptions';
import type { Field } from '../../../src/identify/field';
import type { ModelKnown } from '../../../src/pack/knowledge';
import type { Simulated } from './advert';
import { alikeTo, LISTS, NAMES, PASSED_OFF, SELLERS } from './market';

/**
 * What could be known at best: the posterior by the market's own story, with all its ways added up. For adverts without
 * a number. Its log loss is the least that is possible; what identification loses beside it is its regret.
 */
export function trueShares(advert: Simulated, field: Field): Float64Array {
  const parts = field.hypotheses.map((_, h) => partsOf(advert, field, h));
  const prior = field.logPrior.map(Math.exp);
  const copiedAnywhere = prior.reduce((sum, share, h) => sum + share * parts[h]!.copied, 0);
  const called = advert.model && field.positionOf(advert.model.ref, advert.model.pack);
  const ways = Float64Array.from(field.hypotheses, ({ model }, h) => {
    const { careful, copied, muddled, seen } = parts[h]!;
    const found = LISTS.sameKind * copied + (1 - LISTS.sameKind) * copiedAnywhere;
    const list =
      called === null || called === undefined ? found : LISTS.named * parts[called]!.copied + (1 - LISTS.named) * found;
    const told = SELLERS.careful * careful + SELLERS.copier * list * seen + SELLERS.muddled * muddled;
    return prior[h]! * naming(advert, field, model) * told;
  });
  const whole = ways.reduce((a, b) => a + b, 0);
  return ways.map((way) => way / whole);
}

function naming({ model, maker }: Simulated, field: Field, truth: ModelKnown | null): number {
  const isKnown = truth !== null && !truth.isType;
  const others = alikeTo(field, truth);
  const all = others.reduce((sum, one) => sum + (one.def.number ?? 1), 0);
  const asAlike = model && others.includes(model) ? (model.def.number ?? 1) / all : 0;
  if (!isKnown) return model ? PASSED_OFF * asAlike : maker === null ? 1 - PASSED_OFF : 0;
  const own = (truth.def.maker ?? truth.family?.def.maker) || null;
  if (!model) return maker === null ? NAMES.none : maker === own ? NAMES.maker : 0;
  const rates = (truth.def.mistakenFor ?? []).map((one) => field.positionOf(one.model, truth.pack));
  const at = field.positionOf(model.ref, model.pack);
  const mistaken = rates.length > 0 ? rates.filter((rate) => rate === at).length / rates.length : asAlike;
  return (model === truth ? NAMES.own : 0) + NAMES.mistaken * mistaken;
}

/** The chances of list and answers for each kind of seller; `copied` of the list alone, `seen` of the answers alone. */
function partsOf(advert: Simulated, field: Field, h: number) {
  const claimed = new Map(advert.claims.map(({ attribute, value }) => [attribute.ref, value]));
  const kept = LISTS.careful * LISTS.kept;
  let careful = 1;
  let copied = 1;
  let seen = 1;
  // The muddled seller: the chance of all so far with him right, or wrong, the last time.
  let muddled = [1, 0];
  for (const [ref, leaves] of field.tables.attributes) {
    const count = leaves.values.length;
    const { seller = TRUST.seller, eye = TRUST.eye } = leaves.attribute.def.trust ?? {};
    const { of, shares } = field.tables.of(ref);
    const said = claimed.get(ref);
    const saw = advert.answers[ref] ?? null;
    const sums = { list: 0, copy: 0, eye: 0, right: 0, wrong: 0 };
    for (let leaf = 0; leaf < count; leaf++) {
      const share = shares[of[h]! * count + leaf]!;
      const value = leaves.values[leaf]!;
      const look = saw === null ? 1 : saw === value ? eye : (1 - eye) / (count - 1);
      const word = said === undefined ? 1 : said === value ? seller : (1 - seller) / (count - 1);
      sums.list += share * look * (said === undefined ? 1 - LISTS.careful : LISTS.careful * word);
      sums.copy += share * (said === undefined ? 1 - kept : kept * word);
      sums.eye += share * look;
      sums.right += share * look * Number(said === value);
      sums.wrong += share * look * (said === value ? 0 : 1 / (count - 1));
    }
    careful *= sums.list;
    copied *= sums.copy;
    seen *= sums.eye;
    const begins = (1 - seller) * LISTS.begins;
    const [right, wrong] = muddled as [number, number];
    muddled =
      said === undefined
        ? [right * (1 - LISTS.muddled) * sums.eye, wrong * (1 - LISTS.muddled) * sums.eye]
        : [
            LISTS.muddled * (right * (1 - begins) + wrong * (1 - LISTS.goesOn)) * sums.right,
            LISTS.muddled * (right * begins + wrong * LISTS.goesOn) * sums.wrong,
          ];
  }
  return { careful, copied, seen, muddled: muddled[0]! + muddled[1]! };
}
