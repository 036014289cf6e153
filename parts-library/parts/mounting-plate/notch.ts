// The rectangle with its edge notch: the notch is part of the outline, its inside corners are round.
import {
  makeContour,
  rectangleContour,
  roundCorners,
  type Contour,
  type Point,
} from '../../geometry/index.js';
import { refusal, type Resolved } from '../shared/resolved.js';
import { roundText } from '../shared/words.js';
import type { MountingPlate } from './parameters.js';

type Notch = NonNullable<MountingPlate['notch']>;

/** Turns a point of the bottom edge's frame to the edge that is asked for. */
const turnTo: Readonly<Record<Notch['side'], (x: number, y: number) => Point>> = {
  bottom: (x, y) => ({ x, y }),
  right: (x, y) => ({ x: -y, y: x }),
  top: (x, y) => ({ x: -x, y: -y }),
  left: (x, y) => ({ x: y, y: -x }),
};

/** `at` runs to the right or up; on the top and left edges the turned frame runs the other way. */
const sense = (side: Notch['side']): 1 | -1 => (side === 'top' || side === 'left' ? -1 : 1);

/** Width and height as the notched edge sees them. */
const sizesOf = (p: MountingPlate, side: Notch['side']) =>
  side === 'left' || side === 'right'
    ? { along: p.height.mm, across: p.width.mm }
    : { along: p.width.mm, across: p.height.mm };

function notchRefusal(p: MountingPlate, notch: Notch): Resolved<never> | undefined {
  const { along, across } = sizesOf(p, notch.side);
  const reach = Math.abs(notch.at.mm) + notch.width.mm / 2;
  const room = along / 2 - p.corner.mm;
  if (notch.depth.mm >= across)
    return refusal(
      'notch.depth',
      `A notch ${roundText(notch.depth.mm)} mm deep cuts through a plate ${roundText(across)} mm across.`,
    );
  if (reach >= room)
    return refusal(
      'notch.at',
      `The notch reaches ${roundText(reach)} mm from the middle of its edge; straight edge ends at ${roundText(room)} mm. Nearer to the middle, narrower, or smaller plate corners would do.`,
    );
  const most = Math.min(notch.width.mm / 2, notch.depth.mm);
  return notch.corner.mm > most
    ? refusal(
        'notch.corner',
        `Corners of ${roundText(notch.corner.mm)} mm do not fit in the notch; ${roundText(most)} mm is the most.`,
      )
    : undefined;
}

export interface Outside {
  readonly contour: Contour;
  /** Middle of the notch's floor. */
  readonly notchFloor?: Point;
}

/** The rectangle, with its notch when there is one. */
export function rectangleOutside(p: MountingPlate): Resolved<Outside> {
  const most = Math.min(p.width.mm, p.height.mm) / 2;
  if (p.corner.mm > most) {
    return refusal(
      'corner',
      `Corners of ${roundText(p.corner.mm)} mm do not fit on ${roundText(p.width.mm)} × ${roundText(p.height.mm)} mm; ${roundText(most)} mm is the most.`,
    );
  }
  const { notch } = p;
  if (notch === undefined) {
    const centre = { x: 0, y: 0 };
    const contour = rectangleContour(
      { centre, width: p.width.mm, height: p.height.mm, corner: p.corner.mm },
      'outline',
    );
    return { ok: true, value: { contour } };
  }
  const refused = notchRefusal(p, notch);
  if (refused !== undefined) return refused;
  const { along, across } = sizesOf(p, notch.side);
  const [w, h] = [along / 2, across / 2];
  const middle = notch.at.mm * sense(notch.side);
  const [left, right, floor] = [
    middle - notch.width.mm / 2,
    middle + notch.width.mm / 2,
    -h + notch.depth.mm,
  ];
  const place = turnTo[notch.side];
  const corners = [
    place(-w, -h),
    place(left, -h),
    place(left, floor),
    place(right, floor),
    place(right, -h),
    place(w, -h),
    place(w, h),
    place(-w, h),
  ];
  const sharp = makeContour(corners.map((corner) => ({ ...corner, bulge: 0 })));
  const [outer, inner] = [p.corner.mm, notch.corner.mm];
  const contour = roundCorners(sharp, [outer, 0, inner, inner, 0, outer, outer, outer]);
  return { ok: true, value: { contour, notchFloor: place(middle, floor) } };
}
