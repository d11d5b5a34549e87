import type { Stanced } from '../../claims/types';
import { askTexts } from '../../text/catalogue/asks';
import { findingTexts } from '../../text/catalogue/findings';
import { type Apart, apartAcrossKinds } from '../across-kinds';
import { type Assertion, assertions } from '../assertions';
import type { AuditCase } from '../case';
import { hold } from '../claims-held';
import { exclude } from '../exclusion';
import { sourceOf } from '../source-of';
import type { Finding } from '../types';
import { allowedText, askOf, knownFact, saidEach, say } from '../words';
import { yearsClaimed } from '../years';

const texts = findingTexts.claimClaim;

/** Two of the advert's own statements that exclude each other, where no fact has already decided between them. */
export function claimClaim(auditCase: AuditCase): Finding[] {
  const said = assertions(auditCase).filter((one) => !one.guessed && !one.loose);
  const findings: Finding[] = [];
  for (const [i, first] of said.entries())
    for (const second of said.slice(i + 1)) {
      if (first.attribute !== second.attribute || !exclude(first, second)) continue;
      if (isDecided(auditCase, first) || isDecided(auditCase, second)) continue;
      findings.push(contradiction(auditCase, first, second));
    }
  const told = new Set(findings.flatMap((one) => one.said.map(({ field, start }) => `${field}:${start}`)));
  const isTold = ({ first, second }: Apart): boolean =>
    [first, second].some((one) => told.has(`${quoteOf(one).field}:${quoteOf(one).start}`) || isDecided(auditCase, one));
  const across = apartAcrossKinds(auditCase, said).filter((one) => !isTold(one));
  // Several words for the one kind ("vibrating shuttle", "long bobbins") exclude the other words once.
  const once = across.filter((one, i) => across.findIndex(({ second }) => second === one.second) === i);
  return [...findings, ...once.map((one) => acrossKinds(auditCase, one)), ...years(auditCase)];
}

function isDecided(auditCase: AuditCase, one: Assertion): boolean {
  return hold(auditCase, one.attribute, one.allowed, one.denied)?.verdict === 'refutes';
}

function contradiction(auditCase: AuditCase, first: Assertion, second: Assertion): Finding {
  const [a, b] = [quoteOf(first), quoteOf(second)];
  const attribute = say(first.attribute.def.label);
  return {
    id: `claim-claim:${first.key}:${second.key}`.replaceAll(' ', ':'),
    check: 'claim-claim',
    standing: 'disproved',
    attribute: first.attribute.id,
    said: saidEach([a, b]),
    known: [
      {
        pack: first.attribute.pack,
        entry: first.attribute.id,
        text: texts.known(
          attribute,
          allowedText(first.attribute, first.allowed),
          allowedText(second.attribute, second.allowed),
        ),
        source: sourceOf(auditCase.knowledge, first.attribute.pack, first.attribute.def.source),
      },
    ],
    text: texts.disproved(a.quote, b.quote, attribute),
    ask: askOf(first.attribute.def.ask ?? askTexts.whichIsRight(a.quote, b.quote), auditCase),
  };
}

function acrossKinds(auditCase: AuditCase, { first, second, kind, fact, firm }: Apart): Finding {
  const [a, b] = [quoteOf(first), quoteOf(second)];
  return {
    id: `claim-claim:${first.key}:${second.key}`.replaceAll(' ', ':'),
    check: 'claim-claim',
    standing: firm ? 'disproved' : 'caution',
    attribute: second.attribute.id,
    said: saidEach([a, b]),
    known: knownFact(kind, fact, auditCase.knowledge),
    text: (firm ? texts.apart : texts.unusual)(a.quote, b.quote),
    ask: askOf(second.attribute.def.ask ?? askTexts.whichIsRight(a.quote, b.quote), auditCase),
  };
}

function quoteOf(one: Assertion): Stanced['denial'] & object {
  const claim = one.said[0]!;
  return one.denied ? (claim.denial ?? claim) : claim;
}

/** Two years made that can't both be right, where no serial has dated the thing. */
function years(auditCase: AuditCase): Finding[] {
  const { reading, serial } = auditCase;
  if (serial?.usable && serial.runs.some((run) => run.year !== null)) return [];
  const claims = yearsClaimed(reading).filter((claim) => !claim.approximate);
  for (const [i, first] of claims.entries()) {
    const second = claims.slice(i + 1).find((other) => other.to < first.from || other.from > first.to);
    if (!second) continue;
    return [
      {
        id: `claim-claim:years:${first.from}:${second.from}`,
        check: 'claim-claim',
        standing: 'disproved',
        attribute: null,
        said: saidEach([first, second]),
        known: [],
        text: texts.years(first.quote, second.quote),
        ask: askOf(askTexts.whichIsRight(first.quote, second.quote), auditCase),
      },
    ];
  }
  return [];
}
