// A caliper in a small sketch: a beam and two jaws that touch the two points being measured.

export interface Touch {
  readonly x: number;
  readonly y: number;
}

/** Beam above the line of the points, and how far the jaws reach past it; sketch units. */
const REACH = 24;
const BEAM = 6;
const JAW = 7;

/**
 * A caliper between two points. `outside` jaws close on the points from beyond, `inside` jaws open against them,
 * `points` stand on them (a centre that has no edge to touch).
 */
export function Caliper(props: {
  readonly from: Touch;
  readonly to: Touch;
  readonly jaws: 'outside' | 'inside' | 'points';
  readonly reach?: number;
}) {
  const { from, to, jaws, reach = REACH } = props;
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const degrees = (Math.atan2(to.y - from.y, to.x - from.x) * 180) / Math.PI;
  const side = jaws === 'outside' ? 1 : jaws === 'inside' ? -1 : 0;
  const left =
    side === 0
      ? `-3,${-reach} 3,${-reach} 0,0`
      : `0,3 0,${-reach} ${-side * JAW},${-reach} ${-side * JAW * 0.5},0`;
  const right =
    side === 0
      ? `${length - 3},${-reach} ${length + 3},${-reach} ${length},0`
      : `${length},3 ${length},${-reach} ${length + side * JAW},${-reach} ${length + side * JAW * 0.5},0`;
  return (
    <g class="caliper" transform={`translate(${from.x} ${from.y}) rotate(${degrees})`}>
      <rect x={-8} y={-reach - BEAM} width={length + 24} height={BEAM} />
      <rect x={length - 8} y={-reach - BEAM - 3} width={18} height={BEAM + 3} />
      <polygon points={left} />
      <polygon points={right} />
      <path class="measured" d={`M0 0H${length}`} />
    </g>
  );
}
