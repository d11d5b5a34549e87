import type { PriceSeen } from '../../audit/types';
import { anchorAt } from './anchor';

/** A price that was seen: a ring where it was asked, a filled square where it was paid; the less it counts the paler. */
export function SeenMark(props: { kind: PriceSeen['kind']; at: number; y: number; counted: number; title: string }) {
  const { kind, at, y, counted, title } = props;
  return (
    <svg
      x={`${at}%`}
      y={y}
      width="1"
      height="1"
      overflow="visible"
      opacity={0.4 + 0.6 * Math.min(1, counted)}
      data-kind={kind}
    >
      <title>{title}</title>
      <SeenShape kind={kind} />
    </svg>
  );
}

export function SeenShape({ kind }: { kind: PriceSeen['kind'] }) {
  return kind === 'asked' ? (
    <circle class="seen-asked" r="4" />
  ) : (
    <rect class="seen-paid" x="-4" y="-4" width="8" height="8" />
  );
}

/** This advert's own price: an arrow with the price above it, and a line down to the ruled one. */
export function AskedMark({ at, y, text }: { at: number; y: number; text: string }) {
  return (
    <>
      <line class="scale-asked" x1={`${at}%`} x2={`${at}%`} y1="30" y2={y + 8} />
      <svg x={`${at}%`} y="31" width="1" height="1" overflow="visible" aria-hidden="true">
        <ThisShape />
      </svg>
      <text class="scale-text scale-this" x={`${at}%`} y="18" text-anchor={anchorAt(at)}>
        {text}
      </text>
    </>
  );
}

export function ThisShape() {
  return <path class="scale-arrow" d="M-6 -5H6L0 5Z" />;
}

export function Bracket({ at, y, opens = false }: { at: number; y: number; opens?: boolean }) {
  return (
    <svg x={`${at}%`} y={y} width="1" height="1" overflow="visible" aria-hidden="true">
      <BracketShape opens={opens} />
    </svg>
  );
}

export function BracketShape({ opens }: { opens: boolean }) {
  const inward = opens ? 6 : -6;
  return <path class="scale-bracket" d={`M${inward} -14H0V14H${inward}`} />;
}
