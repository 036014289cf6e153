// Where every roller of a chain stands: round both sprockets and along the strands, at equal steps of its length.

export interface Spot {
  readonly x: number;
  readonly y: number;
}

export interface ChainOnScreen {
  readonly motor: Spot;
  readonly wheel: Spot;
  readonly motorRadius: number;
  readonly wheelRadius: number;
  readonly links: number;
  /** How deep the lower strand hangs. */
  readonly sag: number;
}

export interface Rollers {
  readonly spots: readonly Spot[];
  /** The chain's line as an SVG path. */
  readonly path: string;
  /** The middle of the lower, loose strand. */
  readonly loose: Spot;
  /** How that strand leans, degrees; positive when it falls to the right. */
  readonly looseDegrees: number;
}

type Piece = { readonly length: number; readonly at: (share: number) => Spot };

const onCircle = (centre: Spot, radius: number, angle: number): Spot => ({
  x: centre.x + radius * Math.cos(angle),
  y: centre.y + radius * Math.sin(angle),
});

const arc = (centre: Spot, radius: number, from: number, to: number): Piece => ({
  length: Math.abs(to - from) * radius,
  at: (share) => onCircle(centre, radius, from + (to - from) * share),
});

/** A strand, straight or hanging as a parabola by `sag` below its middle. */
const strand = (from: Spot, to: Spot, sag: number): Piece => ({
  length: Math.hypot(to.x - from.x, to.y - from.y),
  at: (share) => ({
    x: from.x + (to.x - from.x) * share,
    y: from.y + (to.y - from.y) * share + 4 * sag * share * (1 - share),
  }),
});

const written = ({ x, y }: Spot): string => `${x.toFixed(2)} ${y.toFixed(2)}`;

/** Places the rollers on the screen, y downwards; the motor on the left. */
export function placeRollers(chain: ChainOnScreen): Rollers {
  const { motor, wheel, motorRadius, wheelRadius, links, sag } = chain;
  const lean = Math.asin((wheelRadius - motorRadius) / (wheel.x - motor.x));
  // The strands leave both circles at the same angle, the larger one's wrap growing by the lean on either side.
  const up = -Math.PI / 2 - lean;
  const down = Math.PI / 2 + lean;
  const [topLeft, topRight] = [onCircle(motor, motorRadius, up), onCircle(wheel, wheelRadius, up)];
  const [lowLeft, lowRight] = [onCircle(motor, motorRadius, down), onCircle(wheel, wheelRadius, down)];
  const pieces: readonly Piece[] = [
    strand(topLeft, topRight, 0),
    arc(wheel, wheelRadius, up, down),
    strand(lowRight, lowLeft, sag),
    arc(motor, motorRadius, down, up + 2 * Math.PI),
  ];
  const total = pieces.reduce((sum, { length }) => sum + length, 0);
  const spots = Array.from({ length: links }, (_, index): Spot => {
    let along = (total * index) / links;
    for (const piece of pieces) {
      if (along <= piece.length) return piece.at(along / piece.length);
      along -= piece.length;
    }
    return topLeft;
  });
  const middle = { x: (lowLeft.x + lowRight.x) / 2, y: (lowLeft.y + lowRight.y) / 2 };
  return {
    spots,
    path: [
      `M${written(topLeft)}L${written(topRight)}`,
      `A${wheelRadius.toFixed(2)} ${wheelRadius.toFixed(2)} 0 ${lean > 0 ? 1 : 0} 1 ${written(lowRight)}`,
      `Q${written({ x: middle.x, y: middle.y + 2 * sag })} ${written(lowLeft)}`,
      `A${motorRadius.toFixed(2)} ${motorRadius.toFixed(2)} 0 ${lean < 0 ? 1 : 0} 1 ${written(topLeft)}`,
    ].join(''),
    loose: { x: middle.x, y: middle.y + sag },
    looseDegrees: (lean * 180) / Math.PI,
  };
}
