/**
 * In the page: what is handed to the browser as a file to save is held as text at the page's body (`data-saved`), and no
 * window of the browser's own comes up for it, which would take the keys from the page.
 */
export function holdSaved(): void {
  const kept = URL.createObjectURL;
  URL.createObjectURL = (blob: Blob) => {
    void blob.text().then((text) => document.body.setAttribute('data-saved', text));
    return kept.call(URL, blob);
  };
  HTMLAnchorElement.prototype.click = () => {};
}
