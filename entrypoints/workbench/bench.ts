import type { ComponentChildren } from 'preact';
import type { Draft } from '../../src/listing/types';
import type { PackCard } from '../../src/session/pack-card';
import type { Seen } from '../../src/session/seen';
import type { PacksActions, PacksState } from '../../src/view/workbench/PacksRoom';
import type { BenchEngine } from './bench-engine';

/** What all rooms of the workbench share. */
export interface Bench {
  engine: BenchEngine;
  /** A private window, which keeps nothing. */
  isPrivate: boolean;
  packs: {
    state(): PacksState;
    actions: PacksActions;
    /** Tells a room that the shelf was read, for the first time or anew; at once where it has been read already. */
    onShelf(tell: (shelf: readonly PackCard[]) => void): void;
    /**
     * What is kept of packs was changed here: all our pages read it anew. Done once the shelf is shown as it is by now.
     * @param leaving a pack that was taken away with it, or goes on under another id
     */
    changed(leaving?: string): Promise<void>;
  };
  /** What one room hands to another, which takes it when it comes to the front; also where nothing may be kept. */
  handed: { draft: { draft: Draft; seen: Seen } | null };
  /** Draws the room in front anew. */
  draw(): void;
}

/** A room that was opened. It goes on living when another one is in front. */
export interface OpenRoom {
  content(): ComponentChildren;
  /** The page has outlived its program: what isn't kept yet is kept now; answers once it is. */
  close?(): Promise<void>;
}
