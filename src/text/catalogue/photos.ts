import { counted } from './words';

/** The user's own photos of a machine. */
export const photoTexts = {
  heading: 'Your photos of it',
  intro:
    'Pick photos from files to hold them beside the packs’ pictures. Each is drawn anew and smaller before it is kept, so that what a camera writes into a file, such as place, time and device, is not in it. They stay in this browser until you remove them.',
  private: 'This is a private window: your photos are forgotten when it is closed.',
  pick: 'Pick photos',
  working: 'Drawing the photos anew…',
  alt: (name: string) => `Your photo: ${name}`,
  remove: 'Remove',
  most: (n: number) => `At most ${n} photos are kept.`,
  troubles: {
    many: (name: string, most: number) => `${name}: there are ${most} photos already. Remove one first.`,
    large: (name: string, megabytes: number) => `${name}: the file is larger than ${megabytes} MB.`,
    unreadable: (name: string) =>
      `${name}: this browser can’t open it as a photo. JPEG, PNG and WebP files work everywhere.`,
    full: 'The browser’s storage is full, so the photos are shown but not kept. Remove some, or packs that you don’t use.',
    failed: 'The photos could not be kept in this browser. They are shown until this page is closed.',
  },
  added: (n: number) => `${counted(n, 'photo was', 'photos were')} added.`,
} as const;
