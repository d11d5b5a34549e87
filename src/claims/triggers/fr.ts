import type { TriggerRow } from './types';

export const french: readonly TriggerRow[] = [
  [
    'pas seulement|pas uniquement|pas plus de|guère plus de|sans problème|sans souci|pas de problème|aucun problème|sans doute|pas mal|aucun défaut|sans réserve|pas testé|pas testée|pas essayé|pas essayée|jamais utilisé|jamais utilisée|pas encore',
    { effect: 'none', side: 'both', reach: 0 },
  ],
  [
    "n'est pas|n'est pas une|n'est pas un|n'est pas en|ce n'est pas|ce n'est pas une|pas une|pas un|pas de|pas d'|pas en|pas non plus|pas non plus de|non plus de|encore moins|encore moins de|dépourvu de|dépourvue de|démuni de|démunie de|exempte de|pas|ne fait pas|n'a pas|ni|jamais|aucun|aucune|au lieu de|plutôt que|non|nullement|guère|en rien|rien en|rien d'un|rien d'une|loin d'être|loin d'un|loin d'une|loin du|loin des|loin de la",
    { effect: 'denies', side: 'before', reach: 6 },
  ],
  // "Elle ne zigzague pas."
  ["ne|n'", { effect: 'denies', side: 'before', reach: 0 }],
  [
    'oubliez|oublie|zéro|0|sans|manque|il manque|manquant|et non|et pas|mais pas|mais non|pas le modèle avec|pas celle avec|pas celui avec|à la place des|à la place de|à la place du|au lieu de|au lieu des|au lieu du|faute de|pas avec',
    { effect: 'denies', side: 'before', reach: 4 },
  ],
  [
    'ne va pas|ne vont pas|ne convient pas|ne conviennent pas|ne vaut rien|non inclus|non incluse|non fourni|non fournie|absent|absente|manquant|manquante|manque',
    { effect: 'denies', side: 'after', reach: 5 },
  ],
  [
    "comme une|comme un|comme la|comme le|semblable à|similaire à|ressemble à|dans le style|identique à|plus léger que|plus légère que|plus lourde que|plus lourde qu'une|plus lourde qu'un|plus légère qu'une|plus petite qu'une|plus solide que|plus solide qu'une|plus petite que|comparable à|à ne pas confondre avec|même canette que|même canette que la|les mêmes canettes que|on dirait|on croirait",
    { effect: 'likens', side: 'before', reach: 8 },
  ],
  ['sauf|hormis|excepté|à part', { effect: 'denies', side: 'before', reach: 3 }],
  [
    "n'existait pas|n'existe pas|n'était pas|n'est pas prévu|n'y est pas|non plus|non",
    { effect: 'denies', side: 'after', reach: 3 },
  ],
  [
    "elle ne connaît pas|elle ne sait pas|elle ne fait pas|elle ne l'a pas|elle n'a pas|elle ne peut pas",
    { effect: 'denies', side: 'after', reach: 99, across: true, ends: true },
  ],
  [
    "d'ordinaire|d'habitude|habituellement|normalement|en général|généralement|le plus souvent|aucune autre|aucun autre",
    { effect: 'other', side: 'before', reach: 99 },
  ],
  [
    "ne peut pas|peut pas|impossible|on ne peut|peut-être|sans doute une|probablement|je pense|je crois|apparemment|il semble|semble être|on m'a dit|vendue comme|il paraît|pas sûr|pas sûre|selon|pourrait être|doit être|éventuellement|soit",
    { effect: 'guesses', side: 'before', reach: 99 },
  ],
  ['style|copie|réplique', { effect: 'likens', side: 'after', reach: 2 }],
  ["d'après|selon|aux dires de", { effect: 'guesses', side: 'both', reach: 99, across: true }],
  ['je pense|je crois|apparemment|peut-être|probablement', { effect: 'guesses', side: 'after', reach: 8 }],
  [
    "ceux qui disent|qui vous dit|croyant que c'était|pensant que c'était|souvent appelée|souvent appelé|dite|soi-disant|souvent décrite comme|annoncée comme|m'a dit que|m'avait dit que|disait que|disait qu'elle|prétend que|prétendait que|on dit que|on dit qu'elle",
    { effect: 'quotes', side: 'before', reach: 99 },
  ],
  [
    "tout le monde a|tous ont|spécialisé dans|spécialisée dans|spécialiste des|spécialiste de|notre boutique|vendait aussi|vendaient aussi|il me faut|il me fallait|il vous faut une|il vous faudra une|il vous faudrait une|il faut une|il faudra une|prenez une|prenez plutôt|j'ai besoin|j'avais besoin|vous trouverez|on trouve|achat|j'ai aussi|je vends aussi|voir aussi mes|voir mes autres|mes autres|une autre|un autre|ma nouvelle|remplacée par|échange contre|échange possible contre|contre une|je cherche|ma sœur a|la plupart|d'habitude|normalement|généralement|les autres|certaines|d'autres modèles|beaucoup|la version|une version|la version légère|en arrière-plan|celle d'à côté|celle de ma|mon ancienne machine|mon ancienne était|vient d'une|provient d'une|ma machine à moi|sur ma machine|sur la mienne|la version normale|voudrait|veut|souhaite|quelqu'un vend|l'autre vendeur",
    { effect: 'other', side: 'before', reach: 99, across: true },
  ],
  [
    "convient à|compatible avec|adaptable sur|pour|pour la|pour une|va sur|s'adapte à|provenant d'une",
    { effect: 'other', side: 'before', reach: 6, namesOnly: true },
  ],
  [
    "fait que|faire que|fait qu'|faire qu'|coud que|coud qu'|que le|que la|que du|que des|qu'en|qu'au|et elle|et il|et est|et a|avec|qui est|qui a|elle est|elle a|mais|seulement|uniquement|et coud|et fait|et pèse|et prend|et marche|et fonctionne",
    { effect: 'stop', side: 'both', reach: 0 },
  ],
  ["c'est la|c'est le|c'est l'|c'est les|sert de", { effect: 'other', side: 'after', reach: 1 }],
  ['façon|genre', { effect: 'likens', side: 'before', reach: 2 }],
  ["tant qu'à|quitte à", { effect: 'guesses', side: 'before', reach: 99 }],
  ['très peu pour', { effect: 'denies', side: 'after', reach: 4, across: true }],
  [
    "non|aucun|aucune|sans|pas|il n'y en a pas|n'y en a pas|elle n'en a pas|néant|remise en main propre",
    { effect: 'denies', side: 'row', reach: 0 },
  ],
  ['inconnu|inconnue|probablement|peut-être', { effect: 'guesses', side: 'row', reach: 0 }],
  [
    'aussi solide que|aussi robuste que|aussi lourde que|aussi bonne que|presque une|presque un|presque comme',
    { effect: 'likens', side: 'before', reach: 6 },
  ],
  ['comme', { effect: 'likens', side: 'before', reach: 2 }],
  [
    "celle-ci non|celle-ci pas|pas celle-ci|prendre sa place|pris sa place|prend sa place|c'est avant|c'est après|c'était avant|c'était après|c'est chez|c'est pour les|c'est pour la|c'est sur les|c'est sur la|va avec mon autre|vont avec mon autre|pour mon autre|ne la vends pas|ne le vends pas|n'est pas à vendre|s'abstenir|pas à vendre|reste ici|reste chez moi|je la garde|je le garde",
    { effect: 'other', side: 'after', reach: 99, across: true },
  ],
  ['est trop|sont trop|était trop', { effect: 'guesses', side: 'after', reach: 1 }],
  ['si', { effect: 'guesses', side: 'before', reach: 99, across: true }],
  [
    'ne va pas sur|ne vont pas sur|ne convient pas|ne conviennent pas|pas pour',
    { effect: 'denies', side: 'before', reach: 14, namesOnly: true, across: true },
  ],
  [
    "internet dit|sur internet on lit|l'ancien propriétaire écrivait|souvent annoncée avec|l'annonce disait",
    { effect: 'quotes', side: 'before', reach: 99, across: true },
  ],
];
