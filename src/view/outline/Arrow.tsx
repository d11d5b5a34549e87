interface Props {
  from: readonly [number, number];
  to: readonly [number, number];
}

const HEAD = 7;

/** An arrow in a small drawing. */
export function Arrow({ from: [x1, y1], to: [x2, y2] }: Props) {
  const angle = Math.atan2(y2 - y1, x2 - x1);
  const end = (turn: number) =>
    `${(x2 - Math.cos(angle + turn) * HEAD).toFixed(1)} ${(y2 - Math.sin(angle + turn) * HEAD).toFixed(1)}`;
  return <path class="arrow" d={`M${x1} ${y1} L${x2} ${y2} M${end(0.5)} L${x2} ${y2} L${end(-0.5)}`} />;
}
