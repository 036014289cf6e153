// What a cut plan amounts to: metres of cut, starts, torch-on time.
import type { CutFigures, CutPlan } from './types.js';

/**
 * Half width of the time, as a share of it. Until a logged job has corrected it, an estimated cutting time is shown
 * with 20 % either way (common practice): it covers speeds set within a tenth of the chart, slowing at corners and
 * the arc's own delay.
 */
const TIME_SHARE = 0.2;

const SECONDS_PER_MINUTE = 60;

const total = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);

/**
 * The figures of a plan, each of which can be redone by hand. Seconds of a contour = (length + lead-in) / speed x 60
 * + pierce delay; `seconds.low` and `.high` are 20 % below and above the sum. Travel, probing, scores, etches and
 * marks take no time here.
 *
 * @example one hole of 8 in 6 mm plate, hole kerf 1.6, 900 mm/min, delay 0.5 s: path pi x 6.4 = 20.106, lead-in 3.2,
 * (20.106 + 3.2) / 900 x 60 + 0.5 = 2.054 s
 */
export function figuresOf(plan: CutPlan): CutFigures {
  const { pierceSeconds } = plan.settings;
  const contours = plan.contours.map(({ placementId, featureId, length, leadIn, speed }) => ({
    placementId,
    featureId,
    length,
    leadIn: leadIn.length,
    speed,
    pierceSeconds,
    seconds: ((length + leadIn.length) / speed) * SECONDS_PER_MINUTE + pierceSeconds,
  }));
  const likely = total(contours.map(({ seconds }) => seconds));
  return {
    length: total(contours.map(({ length }) => length)),
    leadInLength: total(contours.map(({ leadIn }) => leadIn)),
    lineLength: total(plan.lines.map(({ length }) => length)),
    pierces: contours.length,
    marks: plan.marks.length,
    seconds: { low: likely * (1 - TIME_SHARE), likely, high: likely * (1 + TIME_SHARE) },
    contours,
  };
}
