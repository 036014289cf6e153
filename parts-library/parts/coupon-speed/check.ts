// What is to be said of a speed ladder before it is cut, and once it was read.
import { digits, found, judge, quantity, type Facts } from '../../checks/index.js';
import type { Finding, Part } from '../../model/index.js';
import { couponSource } from '../../process/index.js';
import { writeSpeed } from '../../units/index.js';
import { checkCoupon } from '../shared/coupon/checks.js';
import type { CouponSpeed } from './parameters.js';
import { speedLadder, type SpeedLadder } from './resolve.js';

/** Line length at speed that shows the cut, mm. */
const LEAST_LINE = 100;

function checkLine(p: CouponSpeed, { runUp, straight }: SpeedLadder, facts: Facts): Finding {
  const { length } = facts.format;
  const isShort = p.line.mm < LEAST_LINE - 1e-9;
  return found({
    code: 'speed-line',
    level: judge(['note', isShort]),
    field: 'line',
    title: `${length(p.line.mm)} at speed, ${length(runUp)} to run up at each end`,
    says: isShort
      ? `At least ${length(LEAST_LINE)} shows drag lines and dross; shorter ones are all start and stop.`
      : `Straight part of each slot ${length(straight)}. Judge the middle only.`,
    value: quantity(p.line.mm, 'mm'),
    limit: quantity(LEAST_LINE, 'mm'),
    formula: `v² ÷ 2a = ${digits(runUp)}; ${digits(p.line.mm)} + 2 × ${digits(runUp)} = ${digits(p.line.mm + 2 * runUp)}`,
    source: couponSource,
  });
}

/** The middle of the clean window. */
function checkWindow(p: CouponSpeed, { lines }: SpeedLadder, facts: Facts): readonly Finding[] {
  if (p.slowest === undefined || p.fastest === undefined) return [];
  const [low, high] = [p.slowest.value, p.fastest.value];
  const { unit } = facts.format;
  const speeds = lines.map(({ speed }) => speed);
  if (low > high) {
    return [
      found({
        code: 'speed-window',
        level: 'caution',
        field: 'slowest',
        title: 'No speed is clean: dross of both kinds everywhere',
        says: 'Then it is not the speed: look at height, nozzle and air, and cut the ladder again.',
        source: couponSource,
      }),
    ];
  }
  const isEnd = low <= Math.min(...speeds) + 1e-6 || high >= Math.max(...speeds) - 1e-6;
  const middle = (low + high) / 2;
  return [
    found({
      code: 'speed-window',
      level: judge(['caution', isEnd], ['note', true]),
      field: 'slowest',
      title: `Clean from ${writeSpeed(low, { unit, decimals: 0 })} to ${writeSpeed(high, { unit, decimals: 0 })}: take ${writeSpeed(middle, { unit, decimals: 0 })}`,
      says: isEnd
        ? 'The clean lines reach the end of the ladder, so the window may go on beyond it: cut another round this speed.'
        : 'The middle of the window stands a worn nozzle and a warped plate best.',
      formula: `(${digits(low)} + ${digits(high)}) ÷ 2 = ${digits(middle)}`,
      source: couponSource,
    }),
  ];
}

export function checkCouponSpeed(part: Part, p: CouponSpeed, facts: Facts): readonly Finding[] {
  const answer = speedLadder(p, facts.format);
  if (!answer.ok) return [];
  const { setting, heading, ladder } = answer.value;
  const texts = [...heading, ...ladder.rungs.map(({ text }) => text)];
  return [
    ...checkWindow(p, answer.value, facts),
    checkLine(p, answer.value, facts),
    ...checkCoupon(part, p, setting, texts, 'line', facts),
  ];
}
