import { pickTexts } from '../../text/catalogue/picks';

/** A price in the user's own words, where the page's readings are all wrong. */
export function TypedPrice({ onTyped }: { onTyped: (words: string) => void }) {
  return (
    <form
      class="typed"
      data-part="typed-price"
      onSubmit={(event) => {
        event.preventDefault();
        onTyped(String(new FormData(event.currentTarget).get('price')));
      }}
    >
      <label>
        {pickTexts.another}
        <input type="text" name="price" required maxLength={40} autocomplete="off" />
      </label>
      <button type="submit" class="button plain">
        {pickTexts.take}
      </button>
    </form>
  );
}
