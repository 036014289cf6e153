// A slot with square corners, open into a round eye where it is too narrow to be pierced.
import { makeContour, rectangleContour, type Contour, type Point } from '../../geometry/index.js';
import { leadInFloor } from '../../process/index.js';

/** Half a millimetre of metal more than the pierce must have, so that a wider kerf than foreseen still goes. */
const SPARE = 0.5;

/** Radius of an eye that a pierce has room in: the shortest lead-in, half a kerf, and a little. */
export const eyeRadius = (kerf: number): number => leadInFloor(kerf) + kerf / 2 + SPARE;

/** Whether a slot is too narrow for the pierce to stand clear of its far side. */
export const needsEye = (width: number, kerf: number): boolean =>
  width < leadInFloor(kerf) + kerf / 2 + 2 * kerf + SPARE;

/**
 * An upright slot of `width` and `length`, the lower end at `foot`; with an eye round `foot` below it when one is
 * wanted, and then the straight part begins where it leaves the eye.
 */
export function gaugeSlot(foot: Point, width: number, length: number, eye: number | undefined): Contour {
  const half = width / 2;
  if (eye === undefined || eye <= half) {
    return rectangleContour(
      { centre: { x: foot.x, y: foot.y + length / 2 }, width, height: length },
      'opening',
    );
  }
  const rise = Math.sqrt(eye * eye - half * half);
  // Round the eye from where its left side leaves the slot to where its right side does, by the bottom.
  const sweep = Math.PI + 2 * Math.acos(half / eye);
  const at = (x: number, y: number, bulge: number) => ({ x: foot.x + x, y: foot.y + y, bulge });
  return makeContour(
    [
      at(half, rise, 0),
      at(half, rise + length, 0),
      at(-half, rise + length, 0),
      at(-half, rise, Math.tan(sweep / 4)),
    ],
    { direction: 'opening' },
  );
}
