// An idler in a strand of chain: extra chain, wrap and force, worked by hand.
import { describe, expect, test } from 'vitest';
import { idlerForce, idlerRun } from '../../parts-library/handbook/index.js';

describe('idler in a strand', () => {
  test('in the middle of 400, radius 30, pressed 50: 12.46 of extra chain, 28.59° of wrap', () => {
    // Worked by hand: centre 20 over the line, reach √(200² + 20²) = 200.9975, tangent √(40400 − 900) = 198.7461,
    // lean atan(20/200) + asin(30/200.9975) = 0.099669 + 0.149812; 2 × 198.7461 + 30 × 0.498962 − 400.
    const run = idlerRun({ span: 400, at: 200, radius: 30, press: 50 });
    expect(run?.extra).toBeCloseTo(12.461, 2);
    expect(run?.wrapDegrees).toBeCloseTo(28.588, 2);
  });

  test('a small idler makes two straight lines', () => {
    // √(150² + 12²) + √(230² + 12²) − 380 = 0.4792 + 0.3128.
    expect(idlerRun({ span: 380, at: 150, radius: 1e-6, press: 12 })?.extra).toBeCloseTo(0.79206, 4);
  });

  test('an idler that only touches takes up nothing', () => {
    const run = idlerRun({ span: 380, at: 150, radius: 35, press: 0 });
    expect(run?.extra).toBeCloseTo(0, 9);
    expect(run?.wrapDegrees).toBeCloseTo(0, 9);
  });

  test('outside the strand there is no answer', () => {
    expect(idlerRun({ span: 380, at: 400, radius: 35, press: 5 })).toBeUndefined();
    expect(idlerRun({ span: 380, at: 150, radius: 35, press: -1 })).toBeUndefined();
  });

  test('the chain presses with twice the tension at a half turn, with the tension at 60°', () => {
    // 2 T sin(wrap/2), plane statics.
    expect(idlerForce(1000, 180)).toBeCloseTo(2000, 9);
    expect(idlerForce(1000, 60)).toBeCloseTo(1000, 9);
  });
});
