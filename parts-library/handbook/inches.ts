// Inch tables keep their inch figures; rows give millimetres.

/** Millimetres of a figure printed in inches, rounded to a nanometre so that 0.375 in is 9.525 and not 9.524999. */
export function inches(value: number): number {
  return Math.round(value * 25.4 * 1e6) / 1e6;
}

/** Newtons of a figure printed in pounds-force (1 lbf = 4.4482216 N exactly to the digits given). */
export function poundsForce(value: number): number {
  return value * 4.4482216152605;
}

/** Megapascals of a figure printed in kips per square inch (1 ksi = 6.894757 MPa). */
export function ksi(value: number): number {
  return value * 6.894757293168361;
}
