import { nextEvidence } from '../identify/next-evidence';
import { READS_OTHERWISE } from '../identify/serial-look';
import type { AttributeKnown, ModelKnown } from '../pack/knowledge';
import { localText } from '../pack/local-text';
import type { Outline } from '../pack/schema/about';
import type { LocalText } from '../pack/schema/parts';
import { askTexts } from '../text/catalogue/asks';
import { type SheetLanguage, sheetTexts } from '../text/catalogue/sheet';
import type { AuditCase } from './case';
import { ownWhere } from './own-where';
import { type OpenName, photographsWanted } from './photographs';
import { serialLookOf } from './serial-look';

/** One thing to look at on the spot, in the sheet's language as far as the pack has it. */
export interface SheetCheck {
  /** What an answer is kept under. */
  attribute: string;
  name: string;
  question: string | null;
  where: string | null;
  see: string | null;
  place: string | null;
  outline: Outline | null;
  /** What to ask the seller who stands beside it. */
  ask: string;
  options: { value: string | boolean; text: string }[];
}

/** What to look at, to photograph and to ask when going to see the thing. Cautions that hold for every visit come from the catalogue. */
export interface ViewingSheet {
  language: SheetLanguage;
  title: string;
  url: string | null;
  place: string | null;
  price: string | null;
  /** What the advert calls it, or what it most likely is; null where neither is known. */
  model: string | null;
  checks: SheetCheck[];
  photographs: { label: string; tells: string }[];
  cautions: string[];
  packs: string[];
}

/** More than these nobody looks at while a seller waits. */
const MOST_CHECKS = 10;
const MOST_PHOTOGRAPHS = 8;

/** The languages of an advert's sheets: its own first, where the catalogue has it, and the interface's. */
export function sheetLanguages(language: string | null): SheetLanguage[] {
  const own = language?.toLowerCase().split('-')[0] ?? '';
  return own !== 'en' && Object.hasOwn(sheetTexts, own) ? [own as SheetLanguage, 'en'] : ['en'];
}

/**
 * The sheet for going to see what is audited. On the spot one look is as easy as another, so that information alone
 * decides the order; the number, from which so much follows, comes first. What would be settled from afar is looked at
 * all the same: it is there to be seen.
 */
export function viewingSheet(auditCase: AuditCase, language: SheetLanguage): ViewingSheet | null {
  const { identified, listing, knowledge, reading, claimed, candidates } = auditCase;
  if (!identified) return null;
  const words = (text: LocalText): string => localText(text, language);
  const leader = claimed[0] ?? candidates[0]?.model ?? null;
  const asked = { atHand: true, anyway: true };
  const number = numberCheck(auditCase, leader, language);
  const features = nextEvidence(identified, {}, MOST_CHECKS - number.length, asked).map(({ leaves }) =>
    checkOf(leaves.attribute, [...leaves.covers.keys()], leader, auditCase, language),
  );
  const open = new Set<OpenName>(['serial', 'model']);
  return {
    ...{ language, title: listing.title, url: listing.url, place: listing.place, price: listing.priceText || null },
    model: leader?.label ?? null,
    checks: [...number, ...features],
    photographs: photographsWanted(auditCase, open, new Set())
      .slice(0, MOST_PHOTOGRAPHS)
      .map(({ entry: { label, tells } }) => ({ label: words(label), tells: words(tells) })),
    cautions: ownCautions(auditCase, leader).map(words),
    packs: knowledge.packs.flatMap(({ id, about: { title } }) => (reading.covering.has(id) ? [words(title)] : [])),
  };
}

/** The number itself, where packs have numbers of such things. */
function numberCheck(auditCase: AuditCase, leader: ModelKnown | null, language: SheetLanguage): SheetCheck[] {
  const texts = sheetTexts[language].number;
  const spoken = { ...auditCase, answers: {}, listing: { ...auditCase.listing, language } };
  return serialLookOf(spoken, leader).map(({ attribute, where, ask, options }) => ({
    ...{
      attribute,
      name: texts.name,
      question: texts.question,
      where,
      see: texts.see,
      place: null,
      outline: null,
      ask,
    },
    options: options.map(({ value }) => ({
      value,
      text: value === READS_OTHERWISE ? texts.other : texts.reads(String(value)),
    })),
  }));
}

function checkOf(
  { ref, id, pack, def }: AttributeKnown,
  values: readonly (string | boolean)[],
  leader: ModelKnown | null,
  { knowledge }: AuditCase,
  language: SheetLanguage,
): SheetCheck {
  const words = (text: LocalText): string => localText(text, language);
  const orNull = (text: LocalText | undefined): string | null => (text === undefined ? null : words(text));
  const { yes, no } = sheetTexts[language];
  const labels = new Map(def.kind === 'choice' ? def.values.map(({ id, label }) => [id, words(label)]) : []);
  return {
    ...{ attribute: ref, name: words(def.label), question: orNull(def.question), see: orNull(def.see) },
    where: orNull(ownWhere(leader, { ref, id }) ?? def.where),
    ...{ place: def.place ?? null, outline: outlineOf(pack, knowledge) },
    ask: words(def.ask ?? askTexts.attribute(words(def.label))),
    options: values.map((value) => ({
      value,
      text: typeof value === 'boolean' ? (value ? yes : no) : (labels.get(value) ?? value),
    })),
  };
}

function outlineOf(pack: string, { packs }: AuditCase['knowledge']): Outline | null {
  const own = packs.find(({ id }) => id === pack);
  const base = packs.find(({ id }) => id === own?.about.extends);
  return own?.about.covers.outline ?? base?.about.covers.outline ?? null;
}

/** What packs say to mind of this very model; the rest stands on every sheet. */
function ownCautions({ knowledge, reading }: AuditCase, model: ModelKnown | null): LocalText[] {
  if (!model) return [];
  const isIt = (pack: string, ref: string) => model.ref === ref || model.ref === `${pack}/${ref}`;
  return knowledge.packs
    .filter(({ id }) => reading.covering.has(id))
    .flatMap(({ id, cautions }) =>
      cautions.filter(({ models }) => models?.some((ref) => isIt(id, ref))).map(({ text }) => text),
    );
}
