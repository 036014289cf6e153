// Etched words of a coupon, placed by the coupon itself: headings, and the setting beside each step.
import type { Point } from '../../../geometry/index.js';
import type { Feature, Format } from '../../../model/index.js';
import { letterText } from '../../lettering/strokes.js';
import type { CouponParameters } from './fields.js';
import type { CouponSetting } from './setting.js';

/** Width of a line of text, mm. */
export const textWidth = (text: string, height: number): number =>
  letterText(text, { x: 0, y: 0 }, height).width;

/** One line of etched text, centred. */
export function etched(
  id: string,
  name: string,
  text: string,
  centre: Point,
  height: number,
): readonly Feature[] {
  return letterText(text, centre, height).strokes.map((path, index) => ({
    id: `${id}.${index + 1}`,
    name,
    purpose: 'etch',
    path,
  }));
}

/** `KERF` and `6 S275 45A`: what is etched on a coupon unless something else was typed. */
export function headingOf(
  word: string,
  p: CouponParameters,
  { amps }: CouponSetting,
  { bare }: Format,
): readonly string[] {
  return p.label === undefined || p.label === ''
    ? [word, `${bare(p.thickness.mm)} ${p.material} ${amps}A`]
    : [p.label];
}

/** A speed as it is set and etched: to 10 mm/min or 1 in/min. */
export function speedToSet(speed: number, unit: Format['unit']): number {
  const step = unit === 'mm' ? 10 : 25.4;
  return Math.round(speed / step) * step;
}

/** The bare number of a speed in the job's unit: `1450`, `57`. */
export const bareSpeed = (speed: number, unit: Format['unit']): string =>
  String(Math.round(unit === 'mm' ? speed : speed / 25.4));
