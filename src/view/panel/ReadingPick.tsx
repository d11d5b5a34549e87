import { useRef } from 'preact/hooks';
import { isDoubtful } from '../../listing/doubt';
import { type Lapsed, type Pick, type Pickable, readAs } from '../../listing/picks';
import type { FieldNote, Listing } from '../../listing/types';
import { likelyTexts } from '../../text/catalogue/likely';
import { panelTexts } from '../../text/catalogue/panel';
import { pickTexts } from '../../text/catalogue/picks';
import { langOf, shown } from '../shown';
import { Disclosure } from './Disclosure';
import { TypedPrice } from './TypedPrice';

export interface PickActions {
  onPick: (field: Pickable, pick: Pick) => void;
  onTakeBack: (field: Pickable) => void;
}

interface Props extends PickActions {
  field: Pickable;
  listing: Listing;
  lapsed: Lapsed | undefined;
  /** Where the user's word is kept, in words. */
  keptNote: string;
}

/** The readings of one field to pick from, for a price also one to type: open by itself where it should be looked at. */
export function ReadingPick({ field, listing, lapsed, keptNote, onPick, onTakeBack }: Props) {
  const note = listing.fields[field];
  const name = panelTexts.read.fields[field].toLowerCase();
  const asks = Boolean(lapsed) || (note !== undefined && isDoubtful(field, note));
  // It stays open when the question has been answered, and each reading where it stood: the focus is there.
  const isOpen = useRef(false);
  isOpen.current ||= asks || Boolean(note?.byUser);
  const order = useRef<string[]>([]).current;
  const readings = allReadings(listing, field, note);
  for (const { key } of readings) if (!order.includes(key)) order.push(key);
  readings.sort((a, b) => order.indexOf(a.key) - order.indexOf(b.key));
  if (field !== 'price' && readings.length < 2 && !isOpen.current) return null;

  const own = note?.byUser === 'picked' ? readAs(listing, field) : null;
  return (
    <Disclosure
      label={(asks ? pickTexts.check : note?.byUser ? pickTexts.yours : pickTexts.correct)(name)}
      part={`pick-${field}`}
      open={isOpen.current}
    >
      {readings.length > 0 && <p class="soft">{pickTexts.why[field]}</p>}
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset brings a frame and a legend that would say the same twice */}
      <div class="answers" role="group" aria-label={pickTexts.readings(name)}>
        {readings.map(({ key, value, source }) => (
          <button
            key={key}
            type="button"
            class="answer"
            data-reading={source}
            aria-pressed={value === own}
            onClick={() => (value === own ? onTakeBack(field) : onPick(field, { how: 'picked', value }))}
          >
            <span class="answer-key" aria-hidden="true">
              {value === own && '✓'}
            </span>
            <span class="answer-words" dir="auto" lang={langOf(listing.language)}>
              {shown(value, 160)}
            </span>
            <span class="answer-more">{panelTexts.read.sources[source]}</span>
          </button>
        ))}
      </div>
      {field === 'price' && <TypedPrice onTyped={(value) => onPick(field, typed(value, listing, note))} />}
      <p role="status" data-part="pick-said">
        {lapsed
          ? pickTexts.lapsed[lapsed.why](shown(lapsed.value, 80))
          : note?.byUser && pickTexts[note.byUser](keptNote)}
      </p>
      {(lapsed || note?.byUser) && (
        <button
          type="button"
          class="button plain"
          data-part="unpick"
          onClick={({ currentTarget }) => {
            // The button goes away with the word: whoever works by keyboard goes on at the field's own line.
            currentTarget.closest('details')?.querySelector('summary')?.focus();
            onTakeBack(field);
          }}
        >
          {likelyTexts.settle.takeBack}
          <span class="unseen"> {name}</span>
        </button>
      )}
    </Disclosure>
  );
}

/** What the page says, each reading once: not what the user has typed. */
function allReadings(listing: Listing, field: Pickable, note: FieldNote | undefined) {
  if (!note) return [];
  const own = { value: readAs(listing, field), source: note.source };
  return [...(own.source === 'user' ? [] : [own]), ...note.alternatives].map((one) => ({
    ...one,
    key: one.source + one.value,
  }));
}

/** What is typed is said of the page's own reading: where that changes, it has to be said again. */
function typed(value: string, listing: Listing, note: FieldNote | undefined): Pick {
  const was = note?.byUser === 'typed' ? (note.alternatives[0]?.value ?? '') : readAs(listing, 'price');
  return { how: 'typed', value, was };
}
