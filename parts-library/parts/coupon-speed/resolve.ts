// The lines of a speed ladder, their run-up, and where they lie.
import type { Format } from '../../model/index.js';
import { runUp, speedShares } from '../../process/index.js';
import { bareSpeed, headingOf, speedToSet } from '../shared/coupon/lettering.js';
import { layLadder, type Ladder } from '../shared/coupon/ladder.js';
import { couponSetting, slotWidthFor, type CouponSetting } from '../shared/coupon/setting.js';
import { refusal, type Resolved } from '../shared/resolved.js';
import type { CouponSpeed } from './parameters.js';

/** One line of the ladder. */
export interface SpeedLine {
  /** Share of chart speed, and the speed as it is set, mm/min. */
  readonly share: number;
  readonly speed: number;
}

export interface SpeedLadder {
  readonly setting: CouponSetting;
  readonly chartSpeed: number;
  readonly step: number;
  readonly lines: readonly SpeedLine[];
  /** Run-up at each end for the fastest line, mm. */
  readonly runUp: number;
  /** Straight part of the slots, mm. */
  readonly straight: number;
  readonly slotWidth: number;
  readonly heading: readonly string[];
  readonly ladder: Ladder;
}

/** Steps round a speed of one's own, and round a general chart's. */
const OWN_STEP = 0.05;
const GENERAL_STEP = 0.1;
/** Longest run-up that is drawn, mm. */
const LONGEST_RUN_UP = 250;

export function speedLadder(p: CouponSpeed, format: Format): Resolved<SpeedLadder> {
  const answer = couponSetting(p);
  if (!answer.ok) return answer;
  const setting = answer.value;
  if (p.rungs % 2 === 0) {
    return refusal(
      'rungs',
      `${p.rungs} lines have none in the middle; an odd number puts the chart’s speed there.`,
    );
  }
  const chartSpeed = p.speed?.value ?? setting.row.startSpeed;
  const step = p.step === undefined ? (p.speed === undefined ? GENERAL_STEP : OWN_STEP) : p.step.value / 100;
  const lines = speedShares(step, p.rungs).map((share) => ({
    share,
    speed: speedToSet(share * chartSpeed, format.unit),
  }));
  const fastest = Math.max(...lines.map(({ speed }) => speed));
  const up = runUp(fastest, p.acceleration.value);
  if (up > LONGEST_RUN_UP) {
    return refusal(
      'acceleration',
      `At ${p.acceleration.value} m/s² the torch needs ${Math.round(up)} mm to reach its speed; more acceleration or a lower speed would do.`,
    );
  }
  const straight = Math.ceil(p.line.mm + 2 * up);
  const slotWidth = p.slotWidth?.mm ?? slotWidthFor(p.thickness.mm, setting.row.kerf);
  const heading = headingOf(format.unit === 'mm' ? 'SPEED MM/MIN' : 'SPEED IN/MIN', p, setting, format);
  const ladder = layLadder({
    heading,
    rungs: lines.map(({ speed }, index) => {
      const text = bareSpeed(speed, format.unit);
      return { id: `rung.${index + 1}`, name: `line ${index + 1}, ${text} ${format.unit}/min`, text };
    }),
    straight,
    slotWidth,
    thickness: p.thickness.mm,
    labelHeight: p.labelHeight.mm,
  });
  return {
    ok: true,
    value: { setting, chartSpeed, step, lines, runUp: up, straight, slotWidth, heading, ladder },
  };
}
