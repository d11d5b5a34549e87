import { langOf, shown } from '../shown';

/** Words of an advert, exactly as they stand there, set off from whatever surrounds them. */
export function Quote({ text, language }: { text: string; language: string | null }) {
  return (
    <q class="quote" dir="auto" lang={langOf(language)}>
      {shown(text)}
    </q>
  );
}
