/** Does one piece of work after the other, in the order in which they were asked for; one that fails holds up none. */
export function takingTurns(): <T>(work: () => Promise<T>) => Promise<T> {
  let last: Promise<unknown> = Promise.resolve();
  return (work) => {
    const turn = last.then(work);
    last = turn.catch(() => {});
    return turn;
  };
}
