// The length of a vector. Math.hypot guards against overflow at coordinates no plate has, and costs ten times as much.

/** Length of the vector (x, y), in the unit of its components. */
export const norm = (x: number, y: number): number => Math.sqrt(x * x + y * y);
