import type { Outline } from '../../pack/schema/about';
import { outlineTexts as texts } from '../../text/catalogue/outline';
import { isPlace, type Ring, ringOf } from './places';
import { SewingMachine } from './SewingMachine';
import { Typewriter } from './Typewriter';

interface Props {
  outline: Outline;
  /** The place that is marked, as a pack names it; null or one that isn't drawn: none. */
  place: string | null;
}

/** The outline of a thing, with one place marked by a ring and an arrow: by shape, not by colour. */
export function OutlineDrawing({ outline, place }: Props) {
  const ring = ringOf(outline, place);
  const thing = texts.things[outline];
  const label = ring && isPlace(place) ? texts.marked(thing, texts.places[place]) : texts.drawing(thing);
  return (
    <svg class="outline" role="img" aria-label={label} viewBox="-4 -4 328 208" data-place={ring ? place : undefined}>
      {outline === 'typewriter' ? <Typewriter /> : <SewingMachine />}
      {ring && <Mark ring={ring} />}
    </svg>
  );
}

const ARROW = 36;
const HEAD = 9;
/** A ring that is wider than this is a long box with round corners, so that it leaves what it marks to be seen. */
const LONG = 50;
const CORNER = 12;

function Mark({ ring: { x, y, rx, ry, from } }: { ring: Ring }) {
  const angle = (from / 180) * Math.PI;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const tip = { x: x + cos * (rx + 3), y: y + sin * (ry + 3) };
  const tail = { x: tip.x + cos * ARROW, y: tip.y + sin * ARROW };
  const side = (turn: number) =>
    `${(tip.x + Math.cos(angle + turn) * HEAD * 1.6).toFixed(1)} ${(tip.y + Math.sin(angle + turn) * HEAD * 1.6).toFixed(1)}`;
  const shaft = `M${tail.x.toFixed(1)} ${tail.y.toFixed(1)} L${tip.x.toFixed(1)} ${tip.y.toFixed(1)}`;
  const head = `M${side(0.5)} L${tip.x.toFixed(1)} ${tip.y.toFixed(1)} L${side(-0.5)}`;
  return (
    <g data-part="mark">
      {['mark-halo', 'mark-line'].map((layer) => (
        <g key={layer} class={layer}>
          {rx > LONG ? (
            <rect x={x - rx} y={y - ry} width={2 * rx} height={2 * ry} rx={CORNER} />
          ) : (
            <ellipse cx={x} cy={y} rx={rx} ry={ry} />
          )}
          <path d={`${shaft} ${head}`} />
        </g>
      ))}
    </g>
  );
}
