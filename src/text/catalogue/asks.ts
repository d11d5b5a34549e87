/**
 * Questions to a seller, in the languages that adverts are read in: they go into one message beside the packs' own
 * questions, which are in the advert's language too.
 */
export const askTexts = {
  serialPhoto: {
    en: 'Could you send a photo of the serial number, close up, and of any model plate?',
    de: 'Könnten Sie ein Foto der Seriennummer aus der Nähe schicken, und von jedem Typenschild?',
    fr: 'Pourriez-vous envoyer une photo du numéro de série, de près, et de toute plaque de modèle ?',
  },
  serialAgain: {
    en: 'Could you read the serial number again, and send a photo of it close up?',
    de: 'Könnten Sie die Seriennummer noch einmal ablesen und ein Foto davon aus der Nähe schicken?',
    fr: 'Pourriez-vous relire le numéro de série et en envoyer une photo de près ?',
  },
  serial: {
    en: 'Could you send me the serial number, with a photo of it close up?',
    de: 'Könnten Sie mir die Seriennummer nennen und ein Foto davon aus der Nähe schicken?',
    fr: 'Pourriez-vous m’envoyer le numéro de série, avec une photo de près ?',
  },
  made: {
    en: 'How do you know when it was made? Could you send a photo of the serial number?',
    de: 'Woher wissen Sie, wann sie gebaut wurde? Könnten Sie ein Foto der Seriennummer schicken?',
    fr: 'Comment savez-vous quand elle a été fabriquée ? Pourriez-vous envoyer une photo du numéro de série ?',
  },
  madeWhere: {
    en: 'Where does it say so? Could you send a photo of the plate?',
    de: 'Wo steht das? Könnten Sie ein Foto des Schilds schicken?',
    fr: 'Où est-ce écrit ? Pourriez-vous envoyer une photo de la plaque ?',
  },
  weight: {
    en: 'What does it weigh on a scale, and is the case on it?',
    de: 'Was wiegt sie auf einer Waage, und war der Koffer dabei?',
    fr: 'Combien pèse-t-elle sur une balance, et est-ce avec son coffret ?',
  },
  maker: {
    en: 'Could you send a photo of the maker’s name and of any model plate?',
    de: 'Könnten Sie ein Foto des Herstellernamens schicken, und von jedem Typenschild?',
    fr: 'Pourriez-vous envoyer une photo du nom du fabricant et de toute plaque de modèle ?',
  },
  wholeAndPlate: {
    en: 'Could you send a photo of the whole machine and of any maker’s plate?',
    de: 'Könnten Sie ein Foto der ganzen Maschine schicken, und von jedem Firmenschild?',
    fr: 'Pourriez-vous envoyer une photo de la machine entière et de toute plaque du fabricant ?',
  },
  photos: {
    en: 'Could you send photos of the whole machine from all sides and of the underside?',
    de: 'Könnten Sie Fotos der ganzen Maschine von allen Seiten und von unten schicken?',
    fr: 'Pourriez-vous envoyer des photos de la machine entière de tous côtés et du dessous ?',
  },
  model: {
    en: 'Is there a model name or number on a plate or decal? A photo would help.',
    de: 'Steht ein Modellname oder eine Nummer auf einem Schild oder Abziehbild? Ein Foto wäre hilfreich.',
    fr: 'Y a-t-il un nom ou un numéro de modèle sur une plaque ou un décor ? Une photo aiderait.',
  },
  part: {
    en: 'Could you send a photo of the part beside a ruler, and of any number on it?',
    de: 'Könnten Sie ein Foto des Teils neben einem Lineal schicken, und von jeder Nummer darauf?',
    fr: 'Pourriez-vous envoyer une photo de la pièce à côté d’une règle, et de tout numéro qu’elle porte ?',
  },
  whichModel: (first: string, second: string) => ({
    en: `Is it the ${first} or the ${second}? Could you send a photo of the whole machine and of any model plate?`,
    de: `Ist es die ${first} oder die ${second}? Könnten Sie ein Foto der ganzen Maschine und von jedem Typenschild schicken?`,
    fr: `Est-ce la ${first} ou la ${second} ? Pourriez-vous envoyer une photo de la machine entière et de toute plaque de modèle ?`,
  }),
  notTheOther: (other: string) => ({
    en: `How do you know that it isn’t a ${other}? Could you send a photo of any plate or number?`,
    de: `Woher wissen Sie, dass es keine ${other} ist? Könnten Sie ein Foto von Schild oder Nummer schicken?`,
    fr: `Comment savez-vous que ce n’est pas une ${other} ? Pourriez-vous envoyer une photo de la plaque ou du numéro ?`,
  }),
  whichIsRight: (first: string, second: string) => ({
    en: `Which is right, “${first}” or “${second}”?`,
    de: `Was stimmt, „${first}“ oder „${second}“?`,
    fr: `Qu’est-ce qui est juste, « ${first} » ou « ${second} » ?`,
  }),
  price: (shown: string, other: string) => ({
    en: `Is the price ${shown} or ${other}?`,
    de: `Beträgt der Preis ${shown} oder ${other}?`,
    fr: `Le prix est-il de ${shown} ou de ${other} ?`,
  }),
  /** Where a pack gives no question of its own. */
  attribute: (attribute: string) => ({
    en: `Could you send a photo that shows this: ${attribute}?`,
    de: `Könnten Sie ein Foto schicken, das dies zeigt: ${attribute}?`,
    fr: `Pourriez-vous envoyer une photo qui montre ceci : ${attribute} ?`,
  }),
} as const;
