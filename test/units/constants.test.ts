// The conversion factors against the printed table.
import { expect, test } from 'vitest';
import * as units from '../../parts-library/units/index.js';

// NIST SP 811 (2008 ed.), Appendix B.8, as printed there; exact ones are printed in bold, the others to seven figures.
test.each([
  ['inch to mm', units.INCH, 25.4],
  ['foot to mm', units.FOOT, 304.8],
  ['pound to kg', units.POUND_KILOGRAMS, 0.45359237],
  ['standard gravity', units.STANDARD_GRAVITY, 9.80665],
  ['pound-force to N', units.POUND_FORCE_NEWTONS, 4.4482216152605],
  ['kilogram-force to N', units.KILOGRAM_FORCE_NEWTONS, 9.80665],
])('%s is exact', (_name, constant, printed) => {
  expect(constant).toBe(printed);
});

test.each([
  ['pound-force foot to N·m', units.POUND_FOOT_NEWTON_METRES, 1.355818],
  ['pound-force inch to N·m', units.POUND_INCH_NEWTON_METRES, 0.1129848],
])('%s agrees with the seven figures printed', (_name, constant, printed) => {
  expect(Number(constant.toPrecision(7))).toBe(printed);
});

test('a pound-force is a pound under standard gravity', () => {
  expect(units.POUND_KILOGRAMS * units.STANDARD_GRAVITY).toBeCloseTo(units.POUND_FORCE_NEWTONS, 12);
});
