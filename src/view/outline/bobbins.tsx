import type { ComponentChild } from 'preact';
import { Arrow } from './Arrow';

/** Where the bobbin goes in, and what it looks like; 96 by 76 units each. */

/** The left end of the bed with the needle over it, seen from the front and a little from the left and above. */
function BedEnd({ needle = 70 }: { needle?: number }) {
  return (
    <>
      <path d="M34 38 H94 V62 H34 Z M34 38 L22 26 H82 L94 38 M22 26 V50 L34 62" />
      <path d={`M${needle} 2 V14 M${needle} 14 V33`} />
    </>
  );
}

/** A round bobbin seen from its flat side. */
function Disc({ x, y, r }: { x: number; y: number; r: number }) {
  return (
    <>
      <circle cx={x} cy={y} r={r} />
      <circle cx={x} cy={y} r={r / 3} />
    </>
  );
}

/** A boat-shaped shuttle with its long thin bobbin. */
export function Shuttle({ x, y }: { x: number; y: number }) {
  return (
    <g transform={`translate(${x} ${y})`}>
      <path d="M-28 0 Q-14 -11 18 -8 L26 0 L18 8 Q-14 11 -28 0 Z" />
      <path d="M-12 0 H14 M-12 -4 V4 M14 -4 V4" />
    </g>
  );
}

const long = (
  <>
    <path d="M18 38 H78" />
    <path d="M18 28 V48 M24 28 V48 M78 28 V48 M72 28 V48" />
    <path class="faint" d="M24 32 H72 M24 44 H72" />
  </>
);

/** A round bobbin from the side: two discs and the thread between them; `dome` is how far the discs bulge. */
function fromTheSide(width: number, height: number, dome: number): ComponentChild {
  const [left, right, top, bottom] = [48 - width / 2, 48 + width / 2, 38 - height / 2, 38 + height / 2];
  return (
    <>
      <path
        d={`M${left} ${top} Q48 ${top - dome} ${right} ${top} M${left} ${bottom} Q48 ${bottom + dome} ${right} ${bottom}`}
      />
      <path
        d={`M${left} ${top} V${top + 4} H${right} V${top} M${left} ${bottom} V${bottom - 4} H${right} V${bottom}`}
      />
      <path class="faint" d={`M${left + 5} ${top + 4} V${bottom - 4} M${right - 5} ${top + 4} V${bottom - 4}`} />
    </>
  );
}

const inShuttle = (
  <>
    <BedEnd needle={84} />
    <path class="faint" d="M32 30 H58 L62 35 H37 Z" />
    <Shuttle x={42} y={12} />
    <Arrow from={[46, 20]} to={[46, 32]} />
  </>
);

export const LOADING = {
  front: (
    <>
      <BedEnd />
      <Disc x={64} y={50} r={9} />
      <Arrow from={[82, 75]} to={[71, 58]} />
    </>
  ),
  side: (
    <>
      <BedEnd />
      <ellipse cx="28" cy="44" rx="3.5" ry="8" />
      <Arrow from={[1, 46]} to={[22, 44]} />
    </>
  ),
  top: (
    <>
      <BedEnd />
      <ellipse cx="52" cy="32" rx="11" ry="4" />
      <ellipse cx="52" cy="32" rx="4" ry="1.5" />
      <Arrow from={[50, 4]} to={[52, 26]} />
    </>
  ),
  shuttle: inShuttle,
};

export const BOBBIN = {
  long,
  round: (
    <>
      <Disc x={30} y={38} r={17} />
      <g transform="translate(23 0)">{fromTheSide(34, 24, 0)}</g>
    </>
  ),
  'class-15': fromTheSide(50, 30, 0),
  'class-66': fromTheSide(50, 28, 9),
  'other-round': <Disc x={48} y={38} r={20} />,
};

export const MECHANISM = {
  'transverse-shuttle': (
    <>
      <Shuttle x={48} y={28} />
      <Arrow from={[48, 56]} to={[18, 56]} />
      <Arrow from={[48, 56]} to={[78, 56]} />
    </>
  ),
  'vibrating-shuttle': (
    <>
      <g transform="rotate(-14 48 28)">
        <Shuttle x={48} y={26} />
      </g>
      <path class="arrow" d="M16 48 Q48 70 80 48 M17 57 L16 48 L25 49 M71 49 L80 48 L79 57" />
    </>
  ),
  'oscillating-hook': (
    <>
      <Disc x={48} y={40} r={14} />
      <path class="arrow" d="M24 44 A25 25 0 0 1 72 44 M19 37 L24 45 L31 39 M65 39 L72 45 L77 37" />
    </>
  ),
  'rotary-hook': (
    <>
      <Disc x={48} y={38} r={14} />
      <path class="arrow" d="M70 26 A25 25 0 1 1 48 13 M41 7 L49 13 L42 20" />
    </>
  ),
};
