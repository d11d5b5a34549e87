/** What a room shows: read by its actions, and drawn anew with each change. */
export interface RoomState<S> {
  now: () => S;
  change: (change: Partial<S>) => void;
}

export function roomState<S extends object>(begin: S, draw: () => void): RoomState<S> {
  let state = begin;
  return {
    now: () => state,
    change: (change) => {
      state = { ...state, ...change };
      draw();
    },
  };
}
