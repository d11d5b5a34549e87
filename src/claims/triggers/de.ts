import type { TriggerRow } from './types';

export const german: readonly TriggerRow[] = [
  [
    'nicht nur|kein problem|keine probleme|kein thema|ohne probleme|ohne weiteres|kein zweifel|ohne zweifel|keine garantie|keine rücknahme|nicht schlecht|nicht zuletzt|keine ahnung warum|keine mängel|nicht getestet|nicht geprüft|nicht ausprobiert|nie benutzt|nicht benutzt|noch nicht|nicht probiert',
    { effect: 'none', side: 'both', reach: 0 },
  ],
  [
    'von wegen|nicht|nicht aus|kein|keine|keinen|keiner|keinem|keines|niemals|nie|weder|noch eine|anders als|keinerlei|mangels',
    { effect: 'denies', side: 'before', reach: 6 },
  ],
  [
    'geschweige denn|geschweige|schon gar nicht|schon gar kein|schon gar keine|nix|nix mit|nichts mit|nix aus|vergessen sie|vergesst|ohne|fehlt|fehlen|fehlende|fehlender|fehlendem|fehlenden|fehlendes|nicht mit|auch nicht mit|nicht die mit|nicht das modell mit|nicht die version mit',
    { effect: 'denies', side: 'before', reach: 4 },
  ],
  [
    'kann keine rede sein|keine rede|keine spur|vergebens|vergeblich|passt nicht|passen nicht|taugt nicht|taugen nicht|taugt nichts|taugen nichts|nicht vorhanden|nicht dabei|nicht enthalten|fehlt|fehlen|ist es nicht|ist sie nicht|kann sie nicht|nicht möglich|gibt es nicht|hat sie nicht',
    { effect: 'denies', side: 'after', reach: 6 },
  ],
  [
    'wie eine|wie ein|wie die|wie der|wie bei|ähnlich|ähnlich wie|sieht aus wie|erinnert an|vergleichbar mit|im stil|im stil der|baugleich mit|leichter als|schwerer als|kleiner als|größer als|älter als|besser als|verglichen mit|im vergleich zu|nicht zu verwechseln mit|oft verwechselt mit|oft gehalten für|gleiche spule wie|dieselbe spule wie|die gleichen spulen wie|dieselben spulen wie',
    { effect: 'likens', side: 'before', reach: 8 },
  ],
  ['statt|anstatt|anstelle|außer|ausser|mit ausnahme von', { effect: 'denies', side: 'before', reach: 3 }],
  [
    'fehlanzeige|nein|negativ|nix|ist da nix dran|ist nichts dran|nix dran|ist da nichts',
    { effect: 'denies', side: 'after', reach: 1, ends: true },
  ],
  [
    'andere anzeigen|anderen anzeigen|andere anzeige|anderen anzeige|bei den anderen|zum thema|bei modell|gesucht wird|fehlkauf|bei meiner neuen|bei meiner alten|bei meiner anderen|haben alle|alle haben|spezialisiert auf|spezialist für|unser laden|mein laden|versehentlich|aus versehen|irrtümlich|neuanschaffung|neukauf|wegen umstieg auf|habe auch|auch noch|verkaufe auch|außerdem zu verkaufen|siehe auch meine|meine andere|meine anderen|meine neue|meine alte aus|meine alte wog|meine alte war|meine vorige|eine andere|eine weitere|weitere anzeigen|ersetzt durch|tausche gegen|tausch gegen|gegen eine|suche|meine schwester hat|die andere|die meisten|meist|meistens|normalerweise|gewöhnlich|üblicherweise|in der regel|die späteren|spätere|die früheren|frühere|andere modelle|die anderen|viele|daneben|im hintergrund|andere version|die version|die leichte version|meine alte maschine war|meine alte maschine hatte|die übliche|die normale|stammt aus einer|kommt aus einer|kommt von einer|auf meiner maschine|möchte|hätte gern|jemand verkauft|der andere verkäufer',
    { effect: 'other', side: 'before', reach: 99, across: true },
  ],
  ['ähnlich|artig|nachbau|kopie|stil', { effect: 'likens', side: 'after', reach: 2 }],
  [
    'vielleicht|vermutlich|wohl|wahrscheinlich|möglicherweise|eventuell|evtl|angeblich|lt|laut meiner|laut meinem|ich glaube|ich denke|ich meine|glaube ich|denke ich|nicht sicher ob|bin mir nicht sicher|weiß nicht ob|könnte|könnte eine|dürfte|soll|scheint|mir wurde gesagt|laut|anscheinend|scheinbar|unsicher ob|wurde mir verkauft als|entweder',
    { effect: 'guesses', side: 'before', reach: 99 },
  ],
  ['wäre|wären|könnte|ist zu|sind zu|war zu|waren zu', { effect: 'guesses', side: 'after', reach: 1 }],
  [
    'glaube ich|denke ich|vermutlich|vielleicht|bin mir nicht sicher|angeblich',
    { effect: 'guesses', side: 'after', reach: 8 },
  ],
  [
    'dachte es sei|dachte sie sei|dachte es wäre|dachte sie wäre|wer sagt|wer behauptet|oft als|oft genannt|sogenannte|sogenannter|so genannte|fälschlich als|angeboten als|beschrieben als|manche nennen|sagte es sei|sagte sie sei|meinte es sei|meinte sie sei|behauptete es sei|behauptete|sagte mir|hieß es|angepriesen als',
    { effect: 'quotes', side: 'before', reach: 99 },
  ],
  [
    'passt auf|passt zu|passt für|passend für|passend zu|für|für die|für eine|geeignet für|aus einer|von einer',
    { effect: 'other', side: 'before', reach: 6, namesOnly: true },
  ],
  [
    'und hat|und ist|und die|mit|sondern|die ist|sie hat|sie ist|es ist|aber|nur|und näht|und läuft|und wiegt|und macht|und kann|und nimmt|und braucht',
    { effect: 'stop', side: 'both', reach: 0 },
  ],
  [
    'nein|kein|keine|0 von 10|null|keiner|ohne|nicht vorhanden|fehlanzeige|nicht möglich|nur abholung|abholung|nur selbstabholung',
    { effect: 'denies', side: 'row', reach: 0 },
  ],
  ['unbekannt|vermutlich|vielleicht', { effect: 'guesses', side: 'row', reach: 0 }],
  ['dagegen|hingegen|wiederum', { effect: 'other', side: 'after', reach: 1, namesOnly: true }],
  ['kam später|kamen später|kam erst später|kamen erst später', { effect: 'other', side: 'after', reach: 3 }],
  [
    'so stabil wie|so robust wie|so stark wie|so gut wie|so schwer wie|so leicht wie|fast eine|fast ein|beinahe eine|beinahe ein|fast schon',
    { effect: 'likens', side: 'before', reach: 6 },
  ],
  [
    'meinte|sagte|behauptete|hatte sie als|führte sie als|schild mit|im internet steht|im netz heißt es|laut internet|inserate nennen|oft angeboten mit',
    { effect: 'quotes', side: 'before', reach: 99, across: true },
  ],
  ['wie', { effect: 'likens', side: 'before', reach: 2 }],
  [
    'diese hier nicht|diese nicht|meine nicht|gehören zu meiner anderen|gehört zu meiner anderen|zu meiner anderen|für meine andere|von meiner anderen|verkaufe ich nicht|gebe ich nicht her|bleibt hier|bleibt bei mir|nicht zu verkaufen|unverkäuflich|behalte ich',
    { effect: 'other', side: 'after', reach: 99, across: true },
  ],
  [
    'nicht|nie|niemals|ist das nicht|gibt es hier nicht|konnte sie nie',
    { effect: 'denies', side: 'after', reach: 6, ends: true },
  ],
  ['falls|wenn|ob', { effect: 'guesses', side: 'before', reach: 99, across: true }],
  [
    'passt nicht auf|passen nicht auf|passt nicht in|passen nicht in|passt nicht zu|nicht für',
    { effect: 'denies', side: 'before', reach: 14, namesOnly: true, across: true },
  ],
  ['kein anderer|keine andere|kein anderes', { effect: 'other', side: 'before', reach: 99 }],
];
