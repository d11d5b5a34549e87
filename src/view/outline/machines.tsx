import type { ComponentChild } from 'preact';

/** What drives a sewing machine, how large it is, how it sews, and its bed; 96 by 76 units each. */

/** The machine as a small silhouette. */
const SMALL = 'M8 58 H88 V64 H8 Z M78 58 V34 Q78 24 68 24 H28 Q20 24 20 32 V46 H28 V38 H62 Q66 38 66 44 V58 M24 46 V57';

function scaled(by: number): ComponentChild {
  return (
    <g transform={`translate(${48 - 48 * by} ${64 - 64 * by}) scale(${by})`}>
      <path d={SMALL} vector-effect="non-scaling-stroke" />
    </g>
  );
}

const machine = (
  <path d="M4 58 H64 V64 H4 Z M58 58 V34 Q58 24 48 24 H20 Q12 24 12 32 V46 H19 V38 H44 Q48 38 48 44 V58 M15 46 V57" />
);
const wheel = <rect x="60" y="22" width="8" height="26" rx="4" />;

export const SIZE = { 'full-size': scaled(1), 'three-quarter': scaled(0.75), compact: scaled(0.56) };

export const DRIVE = {
  'hand-crank': (
    <>
      {machine}
      {wheel}
      <path d="M68 35 H84 V54 M80 54 H88 V66 H80 Z" />
    </>
  ),
  treadle: (
    <>
      {machine}
      {wheel}
      <path d="M61 46 L76 74 M67 46 L84 74 M66 74 H92" />
    </>
  ),
  'motor-belt': (
    <>
      {machine}
      {wheel}
      <rect x="74" y="52" width="18" height="14" rx="6" />
      <path d="M60 40 L74 62 M68 26 L86 52" />
    </>
  ),
  'potted-motor': (
    <>
      {machine}
      {wheel}
      <path d="M50 44 H57 V56 H50 Z" class="solid" />
    </>
  ),
};

/** The plate under the needle, and the seam that it makes. */
function plate(hole: ComponentChild, seam: string): ComponentChild {
  return (
    <>
      <rect x="22" y="8" width="52" height="30" rx="8" />
      {hole}
      <path d={seam} />
    </>
  );
}

export const STITCH = {
  'straight-only': plate(
    <circle cx="48" cy="23" r="3" class="solid" />,
    'M10 58 h12 m6 0 h12 m6 0 h12 m6 0 h12 m6 0 h8',
  ),
  zigzag: plate(
    <rect x="38" y="20" width="20" height="6" rx="3" class="solid" />,
    'M10 64 L20 50 L30 64 L40 50 L50 64 L60 50 L70 64 L80 50 L88 62',
  ),
};

export const BED = {
  flat: <path d={SMALL} />,
  'free-arm': (
    <>
      <path d="M12 50 H76 V57 H12 Q8 54 12 50 Z M52 66 H88 V58 M78 50 V34 Q78 24 68 24 H28 Q20 24 20 32 V40 H28 V36 H62 Q66 36 66 42 V50 M24 40 V49 M88 66 V50 H76" />
      <path class="faint" d="M34 44 Q28 54 34 64 M46 44 Q40 54 46 64 M34 44 H46 M34 64 H46" />
    </>
  ),
};
