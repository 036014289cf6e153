// Speeds of turning: motors are rated in turns a minute, instruments may show rev/s or rad/s.
import { describe, expect, it, test } from 'vitest';
import { readRotation, writeRotation } from '../../parts-library/units/index.js';
import { problemOf, valueOf } from './units.js';

// NIST SP 811 (2008), Appendix B.8: 1 rpm = 1.047 198 E-01 rad/s; a turn a second is sixty a minute.
describe('a speed of turning in rpm', () => {
  test.each([
    ['1500', 1500],
    ['1500 rpm', 1500],
    ['1500rpm', 1500],
    ['25 rev/s', 1500],
    ['3000/2', 1500],
  ])('%s is %d', (typed, rpm) => {
    expect(valueOf(readRotation(typed))).toBeCloseTo(rpm, 9);
  });

  it('is 10 rpm at 1.047198 rad/s', () => {
    expect(valueOf(readRotation('1.047198 rad/s'))).toBeCloseTo(10, 5);
  });

  test.each(['fast', '-100 rpm', '100 mm', '1500 ±5'])(
    '"%s" is refused, saying what is accepted',
    (typed) => {
      expect(problemOf(readRotation(typed)).accepts).toContain('rpm');
    },
  );

  it('is written with its unit', () => {
    expect(writeRotation(375)).toBe('375 rpm');
    expect(writeRotation(412.46)).toBe('412.5 rpm');
  });
});
