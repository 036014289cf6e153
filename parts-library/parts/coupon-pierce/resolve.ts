// The rungs of a pierce-delay ladder and where they lie.
import type { Format } from '../../model/index.js';
import { delayRungs } from '../../process/index.js';
import { headingOf } from '../shared/coupon/lettering.js';
import { layLadder, type Ladder } from '../shared/coupon/ladder.js';
import { couponSetting, slotWidthFor, type CouponSetting } from '../shared/coupon/setting.js';
import { refusal, type Resolved } from '../shared/resolved.js';
import type { CouponPierce } from './parameters.js';

export interface PierceLadder {
  readonly setting: CouponSetting;
  /** The chart's delay, s, and whether it was typed. */
  readonly delay: number;
  readonly delays: readonly number[];
  readonly slotWidth: number;
  readonly heading: readonly string[];
  readonly ladder: Ladder;
}

/** `0.5 s`. */
export const seconds = (value: number): string => `${Number(value.toFixed(2))} s`;

export function pierceLadder(p: CouponPierce, format: Format): Resolved<PierceLadder> {
  const answer = couponSetting(p);
  if (!answer.ok) return answer;
  const setting = answer.value;
  const delay = p.delay?.value ?? setting.row.pierceSeconds;
  if (delay === undefined) {
    return refusal(
      'amps',
      `The starting chart does not pierce ${Number(p.thickness.mm.toFixed(2))} mm with ${setting.processClass}: it starts from an edge. Give more current, or the delay to try.`,
    );
  }
  const delays = delayRungs(delay, p.rungs);
  const slotWidth = p.slotWidth?.mm ?? slotWidthFor(p.thickness.mm, setting.row.kerf);
  const heading = headingOf('PIERCE SEC', p, setting, format);
  const ladder = layLadder({
    heading,
    rungs: delays.map((value, index) => ({
      id: `rung.${index + 1}`,
      name: `slot ${index + 1}, ${seconds(value)}`,
      text: String(Number(value.toFixed(2))),
    })),
    straight: p.cut.mm,
    slotWidth,
    thickness: p.thickness.mm,
    labelHeight: p.labelHeight.mm,
  });
  return { ok: true, value: { setting, delay, delays, slotWidth, heading, ladder } };
}
