/** The words of a viewing sheet: in the advert's language where there are some, for two people stand before the thing. */
const en: SheetTexts = {
  name: 'English',
  heading: (title) => `Going to see: ${title}`,
  before: 'Before you go, and on the spot',
  beforeIntro:
    'What the law and the rules of the place say, and people who are licensed for the work, count for more than this sheet.',
  cautions: [
    'Mains wiring: old insulation crumbles and the flex may have no earth. Don’t plug it in, and don’t let it be plugged in for you, before a licensed person has tested it to the local code.',
    'Motors and controllers: they may run hot or give a shock though they hum quietly. Keep your hands off bare metal while anything is under voltage, and don’t open them.',
    'Capacitors: the small ones in old motors and controllers fail, may burst, and may hold a charge after the plug is out. Leave them to a licensed person.',
    'Lifting: cast iron weighs 8 to 20 kg. Lift from below with both hands and a straight back, two people where it is more; try latches and handle close to the ground before you trust them.',
    'Meeting: in a public place or with somebody along; tell somebody where you are and when you will be back.',
    'Paying: when you have seen it, and not ahead. Take no more cash than the price, and ask for a receipt with name and date.',
  ],
  take: 'Take along: this sheet, a lamp, a small magnet, a tape measure, luggage scales, a soft cloth, something to take photos with.',
  checks: 'Look at this, in this order',
  checksIntro: 'What tells most comes first. If you can’t tell, leave it open.',
  none: 'The packs know nothing more that could be looked at.',
  where: 'Where:',
  see: 'What to look for:',
  ask: 'Or ask:',
  yes: 'yes',
  no: 'no',
  cannotTell: 'can’t tell',
  number: {
    name: 'the number on the machine',
    question: 'What does the number on it read?',
    see: 'Read it digit by digit with a light from the side. Does its plate sit as if it had never been off?',
    reads: (serial) => `it reads ${serial}`,
    other: 'it reads otherwise, or isn’t there',
  },
  photos: 'Photos to take',
  notes: 'Notes',
  from: (packs, day) => `Put together by Bedplate on ${day} from these packs: ${packs}.`,
};

interface SheetTexts {
  name: string;
  heading: (title: string) => string;
  before: string;
  beforeIntro: string;
  cautions: readonly string[];
  take: string;
  checks: string;
  checksIntro: string;
  none: string;
  where: string;
  see: string;
  ask: string;
  yes: string;
  no: string;
  cannotTell: string;
  number: { name: string; question: string; see: string; reads: (serial: string) => string; other: string };
  photos: string;
  notes: string;
  from: (packs: string, day: string) => string;
}

const de: SheetTexts = {
  name: 'Deutsch',
  heading: (title) => `Zur Besichtigung: ${title}`,
  before: 'Vor der Fahrt und vor Ort',
  beforeIntro:
    'Was Gesetz und örtliche Vorschriften sagen und wer für die Arbeit zugelassen ist, zählt mehr als dieses Blatt.',
  cautions: [
    'Netzleitung: Alte Isolierung zerbröselt, und die Leitung hat vielleicht keinen Schutzleiter. Nicht einstecken und nicht vorführen lassen, bevor eine zugelassene Fachkraft sie nach den örtlichen Vorschriften geprüft hat.',
    'Motoren und Anlasser: Sie können heiß werden oder einen Schlag geben, auch wenn sie ruhig summen. Kein blankes Metall anfassen, solange etwas unter Spannung steht, und nichts davon öffnen.',
    'Kondensatoren: Die kleinen in alten Motoren und Anlassern versagen, können platzen und auch nach dem Ausstecken geladen sein. Das ist Sache einer zugelassenen Fachkraft.',
    'Heben: Gusseisen wiegt 8 bis 20 kg. Von unten, mit beiden Händen und geradem Rücken heben, Schwereres zu zweit; Riegel und Griff dicht über dem Boden prüfen, bevor man sich darauf verlässt.',
    'Treffen: an einem öffentlichen Ort oder in Begleitung; jemandem sagen, wo man ist und wann man zurück ist.',
    'Zahlen: erst nach dem Ansehen, nichts im Voraus. Nicht mehr Bargeld als den Preis mitnehmen und eine Quittung mit Name und Datum verlangen.',
  ],
  take: 'Mitnehmen: dieses Blatt, eine Lampe, einen kleinen Magneten, ein Maßband, eine Kofferwaage, ein weiches Tuch, etwas zum Fotografieren.',
  checks: 'Das ansehen, in dieser Reihenfolge',
  checksIntro: 'Was am meisten verrät, steht vorn. Was sich nicht sagen lässt, bleibt offen.',
  none: 'Die Pakete wissen nichts weiter, was anzusehen wäre.',
  where: 'Wo:',
  see: 'Worauf achten:',
  ask: 'Oder fragen:',
  yes: 'ja',
  no: 'nein',
  cannotTell: 'nicht zu sagen',
  number: {
    name: 'die Nummer auf der Maschine',
    question: 'Wie lautet die Nummer auf ihr?',
    see: 'Ziffer für Ziffer lesen, mit Licht von der Seite. Sitzt das Schild, als wäre es nie ab gewesen?',
    reads: (serial) => `sie lautet ${serial}`,
    other: 'sie lautet anders oder fehlt',
  },
  photos: 'Fotos, die zu machen sind',
  notes: 'Notizen',
  from: (packs, day) => `Zusammengestellt von Bedplate am ${day} aus diesen Paketen: ${packs}.`,
};

const fr: SheetTexts = {
  name: 'Français',
  heading: (title) => `Aller voir : ${title}`,
  before: 'Avant de partir, et sur place',
  beforeIntro:
    'La loi, les règles du lieu et les personnes habilitées pour ces travaux comptent plus que cette feuille.',
  cautions: [
    'Fils électriques : l’isolant ancien s’effrite et le fil n’a peut-être pas de terre. Ne la branchez pas et ne la laissez pas brancher avant qu’une personne habilitée l’ait vérifiée selon les règles locales.',
    'Moteurs et pédales : ils peuvent chauffer ou donner une décharge même s’ils ronronnent. Ne touchez pas le métal nu sous tension et n’ouvrez rien.',
    'Condensateurs : les petits des vieux moteurs et pédales lâchent, peuvent éclater et rester chargés une fois débranchés. Laissez-les à une personne habilitée.',
    'Soulever : la fonte pèse de 8 à 20 kg. Soulevez par-dessous, à deux mains et le dos droit, à deux si c’est plus lourd ; essayez fermetures et poignée près du sol avant de vous y fier.',
    'Se rencontrer : dans un lieu public ou accompagné ; dites à quelqu’un où vous êtes et quand vous rentrez.',
    'Payer : après avoir vu, jamais d’avance. N’emportez pas plus d’argent que le prix et demandez un reçu avec nom et date.',
  ],
  take: 'À emporter : cette feuille, une lampe, un petit aimant, un mètre ruban, un peson, un chiffon doux, de quoi photographier.',
  checks: 'À regarder, dans cet ordre',
  checksIntro: 'Ce qui en dit le plus vient d’abord. Laissez ouvert ce qui ne se voit pas.',
  none: 'Les paquets ne savent rien d’autre qui serait à regarder.',
  where: 'Où :',
  see: 'Ce qu’il faut voir :',
  ask: 'Ou demander :',
  yes: 'oui',
  no: 'non',
  cannotTell: 'impossible à dire',
  number: {
    name: 'le numéro sur la machine',
    question: 'Quel numéro y lit-on ?',
    see: 'Lisez-le chiffre par chiffre, à la lumière rasante. La plaque semble-t-elle n’avoir jamais été retirée ?',
    reads: (serial) => `on lit ${serial}`,
    other: 'on lit autre chose, ou il n’y est pas',
  },
  photos: 'Photos à prendre',
  notes: 'Notes',
  from: (packs, day) => `Établi par Bedplate le ${day} d’après ces paquets : ${packs}.`,
};

export type SheetLanguage = 'en' | 'de' | 'fr';
export const sheetTexts: Readonly<Record<SheetLanguage, SheetTexts>> = { en, de, fr };
