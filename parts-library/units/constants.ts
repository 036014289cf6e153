// Exact conversion factors. Source: NIST Special Publication 811 (2008 ed.), Appendix B.

/** Millimetres in an inch, exact (NIST SP 811, B.8: inch = 2.54 E-02 m). */
export const INCH = 25.4;

/** Millimetres in a foot, exact (NIST SP 811, B.8: foot = 3.048 E-01 m). */
export const FOOT = 304.8;

/** Kilograms in an avoirdupois pound, exact (NIST SP 811, B.8: 4.535 923 7 E-01 kg). */
export const POUND_KILOGRAMS = 0.45359237;

/** Kilograms in an avoirdupois ounce, exact: a sixteenth of a pound (NIST SP 811, B.8). */
export const OUNCE_KILOGRAMS = 0.028349523125;

/** Standard acceleration of free fall in m/s², exact (NIST SP 811, B.8: 9.806 65 E+00). */
export const STANDARD_GRAVITY = 9.80665;

/** Newtons in a pound-force, exact: pound × standard gravity (NIST SP 811, B.8: 4.448 221 615 260 5 E+00). */
export const POUND_FORCE_NEWTONS = 4.4482216152605;

/** Newtons in a kilogram-force, exact (NIST SP 811, B.8: 9.806 65 E+00). */
export const KILOGRAM_FORCE_NEWTONS = 9.80665;

/** Newton metres in a pound-force foot (NIST SP 811, B.8: 1.355 818 E+00, rounded there). */
export const POUND_FOOT_NEWTON_METRES = (POUND_FORCE_NEWTONS * FOOT) / 1000;

/** Newton metres in a pound-force inch (NIST SP 811, B.8: 1.129 848 E-01, rounded there). */
export const POUND_INCH_NEWTON_METRES = (POUND_FORCE_NEWTONS * INCH) / 1000;

/** Degrees in a radian: 180/π (NIST SP 811, B.8: degree = 1.745 329 E-02 rad). */
export const RADIAN_DEGREES = 180 / Math.PI;
