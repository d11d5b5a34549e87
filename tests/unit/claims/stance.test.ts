import { describe, expect, it } from 'vitest';
import { textPart, tokenAt } from '../../../src/claims/part-text';
import { StanceReader } from '../../../src/claims/stance';

/** The stance of the words between braces; "name:" before the sentence reads them as a name. */
function stanceOf(marked: string, language: string): string {
  const isName = marked.startsWith('name:');
  const raw = marked.replace(/^name:/, '');
  const start = raw.indexOf('{');
  const end = raw.indexOf('}') - 1;
  const text = raw.replace(/[{}]/g, '');
  const part = textPart('description', text);
  const { stance, subject } = new StanceReader(part, new Set([language])).at(
    tokenAt(part, start),
    tokenAt(part, end - 1),
    isName,
  );
  return subject === 'other' && stance !== 'likens' ? 'other' : stance;
}

const english: Record<string, readonly string[]> = {
  says: [
    "It isn't: {cast iron} throughout.",
    'It has a {cast iron} body.',
    'Not only {cast iron}, heavy too.',
    'It is not only {cast iron}, it is heavy too.',
    'It sews {zigzag} without any problem.',
    'weight without case 6.5 kg. {high shank}.',
    'No doubt {cast iron}.',
    'Nothing wrong with the {zigzag}.',
    'It is not aluminium but {cast iron}.',
    'No lamp, {cast iron} body, runs well.',
    'No case. {Zigzag} works.',
    'It is not a lightweight: {10 kg} on the scale.',
    'Not pretty, {cast iron}.',
    'no to both: {cast iron}, zigzag.',
    'Not replaced: {cast iron} wheel.',
    'dont be fooled, {cast iron} all over',
    'not much to carry takes {long bobbins}',
    'If you take the tray off it has a {free arm}.',
    'The booklet says neither: it is {cast iron}.',
    'There is nothing better: {zigzag} all day.',
    'Zigzag - collection only, {cast iron}.',
    'Case missing but {free arm} works.',
    'I was told it is old. It is {cast iron}.',
    'name:For sale: {Wendelow} with case',
    'name:This is the {Wendelow}, for sewing jeans',
    'What it is: {zigzag}.',
    'What it is not: plastic. It is {cast iron}.',
    'It takes the usual {class 15}.',
    'The {free arm} is short.',
    'The {free arm} is good.',
    'The one with {zigzag}.',
    'I tried {zigzag}.',
    'It has {zigzag}.',
    'The {zigzag} feet go with it.',
    'for sale {free arm} number 31400 i think from 61',
    'No lamp {no reverse} no case.',
    'Takes the same {class 15} bobbins as modern machines.',
    "You won't find another of these, {cast iron}.",
  ],
  denies: [
    'isnt {zigzag}.',
    'An early one so {zigzag} it has not, nor a lamp.',
    'doesnt do {zigzag} either',
    'It is not {cast iron}.',
    "It isn't a {zigzag} machine.",
    "This isn't the {zigzag} one.",
    'no {zigzag}',
    'without {drop feed}',
    'Not a heavy or {industrial} machine.',
    'It does not have a {free arm}.',
    'The {free arm} is not included.',
    'Aluminium rather than {cast iron}.',
    'It cannot do {zigzag}.',
    'It did not come with {drop feed}.',
    '{Zigzag}: no',
    '{Zigzag} - no.',
    '[ ] {zigzag}',
    '☐ {zigzag}',
    'No zigzag, let alone a {free arm}.',
    '{Zigzag} this hasn’t.',
    'bar the {zigzag} it does everything',
    '{Shipping}: collection only',
    'What it is not: {zigzag}, free arm.',
    'What it is not: zigzag, {free arm}.',
    '{Zigzag} is no good.',
    'The {free arm} is wrong for it.',
    'Not the model with {zigzag}.',
    '{Class 15} rattles about.',
  ],
  likens: [
    'As strong as an {industrial} machine.',
    'It looks like {cast iron}.',
    'Little brother of the {industrial} ones.',
    'name:A {Wendelow} style machine',
    'name:Fenwarden 350, {Wendelow} inside',
    'name:Lighter than my {Wendelow}.',
    'name:Takes the same bobbin as the {Wendelow}.',
  ],
  guesses: [
    'It may be {cast iron}.',
    'It may not be {cast iron}.',
    'I think it is {cast iron}.',
    'I was told it was {cast iron}.',
    'name:Sold to me as a {Wendelow}.',
    'Is it {cast iron}?',
    'Probably {cast iron}.',
    'No lamp and {cast iron}',
    'The {free arm} is too short.',
    'Neighbour tried {class 66} out of her box, they jam.',
    '{Zigzag} I doubt it.',
  ],
  quotes: [
    "Oh sure, it's {zigzag}, and I'm the Queen.",
    'Often called {industrial} but it is not.',
    'So-called {industrial} machine',
    'Someone suggested a {zigzag}.',
    'You will read elsewhere that it has {reverse}.',
    'A man at the fair swore only {cast iron} ones were made.',
    'I used to call it {industrial}.',
    'Anyone who says {industrial} is wrong.',
  ],
  other: [
    'I also have a {zigzag} machine.',
    'Swap for a {free arm}.',
    'name:Bobbin case fits {Wendelow}',
    'name:Bobbin case for the {Wendelow}',
    'I tried a {free arm}.',
    'My listings: {zigzag}.',
    'Our shop has {zigzag}.',
    'Everyone has {zigzag}.',
    'Specialising in {zigzag}.',
    'The {zigzag} feet go with my other machine.',
    'The usual {class 15}.',
    'Whereas the normal {zigzag} model weighs less.',
    '{Zigzag} only arrived with the next one.',
    'In background a {zigzag}.',
    'It sews (the one I keep is older and sews {zigzag}).',
  ],
};

const german: Record<string, readonly string[]> = {
  says: [
    'Ist sie aber nicht: {Gusseisen}.',
    'Sie ist aus {Gusseisen}.',
    'Nicht aus Aluminium, sondern aus {Gusseisen}.',
    'Kein Problem, {Gusseisen} hält.',
    '{Gusseisen} ist schwer.',
    'Die mit {Zickzack}.',
    'Die {Spulen} gehören dazu.',
    'Statt Freiarm hat sie ein {Flachbett}.',
  ],
  denies: [
    '{Zickzack} konnte sie nie.',
    'Ein {Freiarm} ist das nicht.',
    'Kein {Zickzack}',
    '{Versand}: nur Abholung',
    'Sie ist nicht aus {Aluminium}.',
    'ohne {Koffer}',
    'auch keine {Industriemaschine}',
    'Nicht die mit {Zickzack}.',
    'Was sie nicht ist: {Zickzack}.',
    'Mangels {Zickzack} zu verkaufen.',
    'Wegen fehlendem {Freiarm} abzugeben.',
    'Keinerlei {Aluminium} verbaut.',
    'Von {Zickzack} keine Spur.',
    '{Zickzack}, Freiarm, Licht: alles nicht vorhanden.',
    'Zickzack, {Freiarm}: Fehlanzeige.',
    'Statt {Freiarm} hat sie ein Flachbett.',
  ],
  guesses: [
    'Vermutlich aus {Gusseisen}.',
    'Bei {12 kg} wäre das leichter.',
    'Bei {9 kg} könnte ich sie tragen.',
    '{Gusseisen} ist zu schwer.',
  ],
  quotes: ['Ich dachte es wäre {Gusseisen}.', 'Wer sagt {Gusseisen}, irrt.'],
  other: [
    'Alle haben {Zickzack}.',
    'Spezialisiert auf {Zickzack}.',
    'Die {Spulen} gehören zu meiner anderen.',
    'Bei meiner neuen ist {Zickzack} dabei.',
    'Gesucht wird außerdem: {Industriemaschine}.',
    'Bei Modell 8 gibt es {Zickzack}.',
    'Fehlkauf: {Spulen Klasse 66}.',
    'Zum Thema {Freiarm}: den hatten nur die kleinen.',
    'name:Diese ist schwer, die {Wendelow} dagegen leicht.',
  ],
  likens: ['Sieht aus wie {Gusseisen}.'],
};

const french: Record<string, readonly string[]> = {
  says: [
    'Elle est en {fonte}.',
    "C'était de la {fonte}.",
    'La {fonte} est lourde.',
    'Le modèle avec {zigzag}.',
    'name:Une {Wendelow}.',
    "Elle n'a {pas de marche arrière}.",
    'Pas de zigzag, {point droit uniquement}.',
  ],
  denies: [
    'nest pas en {fonte}',
    'Nullement une {industrielle}.',
    "Loin d'être une {industrielle}.",
    'Elle ne {zigzague} pas.',
    "Elle n'est pas en {fonte}.",
    'sans {coffret}',
    'pas de {zigzag}',
    'Pas le modèle avec {zigzag}.',
    'Le {bras libre} ne vaut rien.',
  ],
  guesses: [
    'pas de zigzag {point droit uniquement}',
    'pas de zigzag point droit {point droit seulement}',
    'Je pense que le corps est en {fonte}.',
    'La {fonte} est trop lourde.',
  ],
  likens: [
    "name:Plus lourde qu'une {Wendelow}.",
    'plus lourde quune machine en {alu}',
    'Le zigzag aussi bien {que le point droit}.',
    'Elle fait plus {que le point droit}.',
  ],
  quotes: ["Croyant que c'était de la {fonte}.", 'Ceux qui disent {fonte} se trompent.'],
  other: ['Le {zigzag} c’est après 1958.', 'Tout le monde a {zigzag}.', 'Les {canettes} vont avec mon autre machine.'],
};

describe.each([
  ['en', english],
  ['de', german],
  ['fr', french],
] as const)('stance and subject by clause (%s)', (language, table) => {
  for (const [stance, sentences] of Object.entries(table))
    it.each(sentences)(`${stance}: %s`, (sentence) => {
      expect(stanceOf(sentence, language)).toBe(stance);
    });
});
