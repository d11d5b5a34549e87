import { englishForms } from './forms';
import type { Lexicon, WordClass } from './types';

/** Small words and irregular verbs as they are. Folded. Common practice, no source. */
const WORDS: Partial<Record<WordClass, string>> = {
  article: 'a an the this that its it own no',
  generic:
    'any every each another other most many some few several those these later earlier most various whichever certain',
  possessive: 'my her his their your our whose',
  joins: 'and or & + plus nor',
  begins: 'because cause coz cos bc since which that so while who thus therefore hence though although but',
  supposes: 'if whether unless when where before until till till than whenever once',
  prep: 'as with w in of from for on at by against beside besides behind over under after about between among amongst despite versus vs per near off onto past through throughout toward towards upon via within into like unlike except alongside around during inside outside below above across',
  to: 'to',
  it: 'it this she he here itself mine machine',
  they: 'they them others ones nobody which',
  person:
    'i we you me us him someone somebody anyone anybody everyone everybody people folk folks who friend neighbour neighbor mother mum mom mam father dad gran grandma grandmother granny nan nana grandad grandfather aunt auntie uncle sister brother wife husband daughter son cousin niece nephew partner lady owner seller sellers owners buyer buyers dealer dealers man woman girlfriend boyfriend family child children students student sewist sewer tailor those they',
  there: 'there',
  be: "is 's are 're 'm am was were be been being isn't aren't wasn't weren't ain't",
  have: "has have had having 've hasn't haven't hadn't got gotten",
  asserts:
    'do does did doing done sew sews sewed sewn sewing make makes making made run runs ran running come comes came coming give gives gave given giving built build cast forged moulded molded fabricated set sets show shows shown wear wears worn',
  takes: 'take takes took taking taken',
  uses: '',
  can: "can will 'll could able",
  would: "would 'd might may must should wouldn't couldn't shouldn't mustn't mightn't",
  not: "not never n't don't doesn't didn't can't cannot won't hardly barely scarcely isn't aren't wasn't weren't hasn't haven't hadn't",
  deals:
    'swap swaps swopped bought buy buys buying kept keeping keeps keep gave met meet meets meeting saw seen see seeing sought seek seeks seeking found find finds finding learnt learn began begin begun grew grow went go goes going gone moved paid pay pays paying cost costs dearer cheaper worth px prefer prefers preferred preferring preference got-rid lent lend stood stand stands sat followed led lost lose won win wins beat beats beaten came-from taught teach teaches outsew outsews deal dealt deals dealing competes rid partnered fancy fancies price half twice times equal equals equalled match matches matched no-match',
  nearly: 'almost nearly practically virtually quasi semi semi-',
  lacks: 'lack lacks lacking lacked missing',
  sells: 'sold sell sells selling sale',
  speech:
    'swore sworn said say says saying told tell tells telling called call calls calling wrote write writes written writing read reads reading heard hear hears hearing myth rumour rumor legend story term word words claimed typo label labelled labeled mislabelled mislabeled misdescribed described correction edit edited edits question questions classed',
  thinks:
    'thought think thinks thinking felt feel feels feeling reckon reckons reckoned reckoning guess guesses guessed guessing supposed suppose supposedly presumably suspect doubt unsure uncertain guesswork opinion seem seems seemed appear appears appeared believe believes believed assume assumes assumed wonder wonders wondering perhaps maybe possibly probably',
  adverb:
    'clean also really very quite truly even just only still always now actually simply too yet already then again ever never often usually sometimes perhaps both all itself however though so fully completely perfectly easily nicely happily well easily',
  own: 'machine model version head bed body frame construction housing casting chassis shell build thing beast girl workhorse unit item one stitch stitching sewing type variety edition lot set-up design mechanism system drive motor action make beauty gem classic relic',
};

/** Regular verbs, each in its four forms. */
const VERBS: Partial<Record<WordClass, string>> = {
  asserts:
    'boast feature include offer provide produce perform work handle manage sport equip fit supply finish convert change switch turn flip become support stitch construct manufacture power drive operate cover function deliver achieve combine carry weigh remain stay retain let allow enable help mean ensure guarantee give add reveal expose hum rattle squeak spin turn believe',
  takes: 'use accept require need',
  uses: 'try test check enjoy serve service oil demonstrate dismantle strip clean adjust rebuild overhaul grease polish',
  deals:
    'exchange trade barter replace upgrade move purchase list want wish hope prefer like love hate miss search hunt learn own inherit borrow follow succeed precede predate rival outperform compare resemble suit expect imagine collect store hanker crave consider welcome look start grow donate part downsize outlive outlast outclass compete remember recall dream yearn ask import wait save stock long pass reserve advertise afford prize choose',
  speech:
    'describe list claim state mention advertise name mislabel misdescribe label market dub bill ask insist swear catalogue argue promise ignore confuse mistake quote repeat brand term',
  thinks: 'guess assume believe doubt wonder suspect reckon seem appear suppose imagine',
};

const SPLIT = new Map<string, readonly string[]>();
for (const subject of 'it that this she he there here which who what one i we you they'.split(' '))
  for (const ending of ["'s", "'ve", "'d", "'ll", "'re", "'m"]) SPLIT.set(subject + ending, [subject, ending]);

const classes = new Map<string, WordClass>();
const add = (word: string, is: WordClass): void => {
  if (word && !classes.has(word)) classes.set(word, is);
};
for (const [is, words] of Object.entries(WORDS)) for (const word of words.split(' ')) add(word, is as WordClass);
for (const [is, verbs] of Object.entries(VERBS))
  for (const verb of verbs.split(' ')) for (const form of englishForms(verb)) add(form, is as WordClass);

export const english: Lexicon = {
  // "Doesnt", "isnt": people leave the apostrophe out.
  classOf: (folded) =>
    classes.get(folded) ?? (folded.endsWith('nt') ? classes.get(`${folded.slice(0, -1)}'t`) : undefined) ?? 'plain',
  split: (folded) => (folded.includes("'") && SPLIT.get(folded)) || [folded],
};
