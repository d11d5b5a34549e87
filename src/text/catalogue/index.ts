import { cli } from './cli';

export const texts = {
  cli,
  product: {
    name: 'Bedplate',
    description: 'Holds listings of old machines against what clubs know.',
    buttonTitle: 'Read this advert',
  },
} as const;
