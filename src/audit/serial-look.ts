import { READS_OTHERWISE, SERIAL_LOOK, serialLookBits } from '../identify/serial-look';
import type { ModelKnown } from '../pack/knowledge';
import { askTexts } from '../text/catalogue/asks';
import { identifyTexts } from '../text/catalogue/identify';
import type { AuditCase } from './case';
import type { SerialCase } from './serial-case';
import type { NextEvidence } from './types';
import { askOf } from './words';

const texts = identifyTexts.serialLook;

/** The same question as the finding asks that doubts the number, so that the seller gets it once. */
function askFor({ verdict }: SerialCase) {
  if (verdict === 'another-year') return askTexts.made;
  return verdict === 'fits' || verdict === 'another-model' ? askTexts.serialPhoto : askTexts.serialAgain;
}

/** What the number may be a slip for is offered, so far. */
const MOST_SLIPS = 3;

/**
 * The number itself, as something to look at: all else that a number says hangs on its being read rightly, and on its
 * plate. Nothing once that was answered, or where no pack has numbers of such things; without answers to choose where
 * the advert gives no number.
 */
export function serialLookOf(auditCase: AuditCase, leader: ModelKnown | null): NextEvidence[] {
  const { serial, identified, answers, listing, knowledge, reading } = auditCase;
  if (!identified || Object.hasOwn(answers, SERIAL_LOOK)) return [];
  const schemes = knowledge.serials.schemes.filter(({ pack }) => reading.covering.has(pack));
  if (schemes.length === 0 || (listing.byHand && !serial)) return [];
  const maker = (leader?.def.maker ?? leader?.family?.def.maker)?.toLowerCase();
  const runs = serial?.runs ?? [];
  const scheme = runs[0]?.scheme ?? schemes.find((one) => one.scheme.maker?.toLowerCase() === maker)?.scheme;
  const slips = (serial?.suggestions ?? []).slice(0, MOST_SLIPS).map(({ normal }) => normal);
  return [
    {
      attribute: SERIAL_LOOK,
      name: texts.name,
      bits: serialLookBits(identified),
      effort: 'photo',
      ask: askOf(serial ? askFor(serial) : askTexts.serial, auditCase),
      where: scheme?.where ?? texts.where,
      see: serial ? texts.see : texts.seeNone,
      place: null,
      options: serial
        ? [
            { value: serial.claim.normal, text: texts.reads(serial.claim.quote), explain: null },
            ...slips.map((normal) => ({ value: normal, text: texts.reads(normal), explain: null })),
            { value: READS_OTHERWISE, text: texts.other, explain: null },
          ]
        : [],
    },
  ];
}
