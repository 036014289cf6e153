// Draws the kerf coupon: a square with a square window, its axes and heading etched.
import { rectangleContour, type Point } from '../../geometry/index.js';
import type { Feature, Part, Staged } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { etched, headingOf } from '../shared/coupon/lettering.js';
import { couponSetting } from '../shared/coupon/setting.js';
import { etchLabel, noRoomForLabel } from '../shared/label.js';
import { refuseToDraw } from '../shared/refuse.js';
import { couponKerfAbout } from './about.js';
import type { CouponKerf } from './parameters.js';

const MIDDLE: Point = { x: 0, y: 0 };

/** Metal that stays beside the window: two thicknesses, and room for the etched axes. */
const frameFor = (p: CouponKerf): number => Math.max(2 * p.thickness.mm, p.labelHeight.mm + 6);

export function drawCouponKerf(p: CouponKerf, { format }: DrawContext): Staged<Part | undefined> {
  const setting = couponSetting(p);
  if (!setting.ok) return refuseToDraw('coupon', setting.field, setting.says);
  const [side, window] = [p.side.mm, p.window.mm];
  const frame = frameFor(p);
  if (window + 2 * frame > side) {
    return refuseToDraw(
      'coupon',
      'window',
      `A window of ${Number(window.toFixed(2))} mm leaves less than ${Number(frame.toFixed(2))} mm round it in a square of ${Number(side.toFixed(2))} mm; a smaller window or a larger square would do.`,
    );
  }
  const square = (size: number) => ({ centre: MIDDLE, width: size, height: size });
  const plain: readonly Feature[] = [
    { id: 'outline', name: 'square', purpose: 'outline', contour: rectangleContour(square(side), 'outline') },
    {
      id: 'window',
      name: 'window',
      purpose: 'opening',
      contour: rectangleContour(square(window), 'opening'),
    },
  ];
  const middle = (side + window) / 4;
  const heading = headingOf('KERF', p, setting.value, format).join(' ');
  const label = etchLabel(heading, p.labelHeight.mm, plain, [{ x: 0, y: middle }]);
  return {
    value: {
      family: couponKerfAbout.id,
      name: 'Kerf coupon',
      features: [
        ...plain,
        ...etched('axis.x', 'axis x', 'X', { x: middle, y: 0 }, p.labelHeight.mm),
        ...etched('axis.y', 'axis y', 'Y', { x: 0, y: -middle }, p.labelHeight.mm),
        ...(label ?? []),
      ],
      material: p.material,
      thickness: p.thickness.mm,
      quantity: 1,
    },
    findings: label === undefined ? [noRoomForLabel(heading)] : [],
  };
}
