import type { ComponentChild } from 'preact';
import type { Outline } from '../../pack/schema/about';
import { BOBBIN, LOADING, MECHANISM } from './bobbins';
import { BED, DRIVE, SIZE, STITCH } from './machines';
import { BANKS, BUILD, SHIFT, STRIKE } from './typewriters';

type Drawings = Readonly<Record<string, Readonly<Record<string, ComponentChild>>>>;

/** By the id of the attribute, then of the value: the words that packs of such a thing commonly use. */
export const DRAWN: Readonly<Record<Outline, Drawings>> = {
  'sewing-machine': {
    ...{ loading: LOADING, bobbin: BOBBIN, mechanism: MECHANISM },
    ...{ drive: DRIVE, size: SIZE, stitch: STITCH, bed: BED },
  },
  typewriter: { strike: STRIKE, shift: SHIFT, banks: BANKS, build: BUILD },
};

interface Props {
  /** null: a thing of which there is no drawing. */
  outline: Outline | null;
  /** The attribute's reference or id. */
  attribute: string;
  value: string | boolean;
}

/** A small drawing of one answer; a blank tag where there is none. It says nothing that the answer's words don't. */
export function OptionDrawing({ outline, attribute, value }: Props) {
  const drawn = drawingOf(outline, attribute, value);
  return (
    <svg class="option-drawing" aria-hidden="true" viewBox="0 0 96 76" data-drawn={drawn === null ? 'tag' : 'own'}>
      <g class="drawn">{drawn ?? <BlankTag />}</g>
    </svg>
  );
}

function drawingOf(outline: Outline | null, attribute: string, value: string | boolean): ComponentChild {
  const drawings = outline === null ? undefined : own(DRAWN[outline], bare(attribute));
  return (drawings && own(drawings, String(value))) ?? null;
}

/** Names come from packs: "constructor" is none of ours. */
function own<T>(table: Readonly<Record<string, T>>, key: string): T | undefined {
  return Object.hasOwn(table, key) ? table[key] : undefined;
}

function bare(attribute: string): string {
  return attribute.slice(attribute.lastIndexOf('/') + 1);
}

function BlankTag() {
  return (
    <>
      <path class="faint" d="M22 22 L34 16 H78 V60 H34 L22 54 Z" />
      <circle class="faint" cx="34" cy="38" r="4" />
    </>
  );
}
