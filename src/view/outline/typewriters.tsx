import { Arrow } from './Arrow';

/** Where the type strikes, what moves for capitals, and the build of a typewriter; 96 by 76 units each. */

const platen = <circle cx="48" cy="26" r="14" />;

const carriage = <rect x="10" y="18" width="76" height="10" rx="4" />;
const basket = <path d="M26 62 Q48 34 70 62 M36 60 L42 50 M48 60 V47 M60 60 L54 50" />;

function rows(many: readonly number[]) {
  return (
    <>
      <path d="M8 12 H88 V66 H8 Z" />
      {many.map((y) => [20, 34, 48, 62, 76].map((x) => <circle key={`${x} ${y}`} cx={x} cy={y} r="4" />))}
    </>
  );
}

export const STRIKE = {
  understroke: (
    <>
      {platen}
      <Arrow from={[48, 72]} to={[48, 44]} />
    </>
  ),
  frontstroke: (
    <>
      {platen}
      <Arrow from={[92, 58]} to={[63, 33]} />
    </>
  ),
};

export const SHIFT = {
  carriage: (
    <>
      {carriage}
      {basket}
      <Arrow from={[90, 46]} to={[90, 30]} />
    </>
  ),
  segment: (
    <>
      {carriage}
      {basket}
      <Arrow from={[84, 44]} to={[84, 66]} />
    </>
  ),
};

export const BANKS = { three: rows([26, 39, 52]), four: rows([21, 33, 45, 57]) };

export const BUILD = {
  desk: <path d="M12 14 H84 V24 H12 Z M20 24 H76 L90 68 H6 Z" />,
  portable: <path d="M16 30 H80 V39 H16 Z M22 39 H74 L84 66 H12 Z" />,
  flat: <path d="M16 46 H80 V53 H16 Z M20 53 H76 L82 66 H14 Z" />,
};
