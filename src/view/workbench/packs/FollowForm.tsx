import { useState } from 'preact/hooks';
import { followTexts } from '../../../text/catalogue/follow';
import { Looked } from './Looked';
import type { FollowActions, FollowState } from './state';

const texts = followTexts.form;

/** Where the address of a pack's notice is given; what stands there is shown before anything is taken. */
export function FollowForm({ state, actions }: { state: FollowState; actions: FollowActions }) {
  const [address, setAddress] = useState('');
  const looking = state.looking?.pack === null ? state.looking : null;
  return (
    <section class="room-part" aria-labelledby="follow">
      <h2 id="follow">{texts.heading}</h2>
      <p>{texts.text}</p>
      <form
        class="follow-form"
        onSubmit={(event) => {
          event.preventDefault();
          actions.look(address);
        }}
      >
        <label class="field" for="follow-address">
          {texts.label}
        </label>
        <input
          id="follow-address"
          type="text"
          inputMode="url"
          autocomplete="off"
          spellcheck={false}
          data-part="follow-address"
          value={address}
          onInput={(event) => setAddress(event.currentTarget.value)}
        />
        <p class="soft">{texts.leave}</p>
        <button type="submit" class="button" data-part="follow-look">
          {texts.button}
        </button>
      </form>
      <Looked looking={looking} actions={actions} />
    </section>
  );
}
