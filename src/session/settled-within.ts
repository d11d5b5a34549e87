/** Done once the work is done or has failed, after so many milliseconds at the latest; it never fails itself. */
export function settledWithin(work: Promise<unknown>, milliseconds: number): Promise<void> {
  return new Promise((resolve) => {
    const late = setTimeout(resolve, milliseconds);
    const settled = () => {
      clearTimeout(late);
      resolve();
    };
    work.then(settled, settled);
  });
}
