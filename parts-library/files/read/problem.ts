// A drawing that cannot be read: what, where, what would do, and the option that a person would set.

/** Thrown inside the reader; `readDrawing` turns it into a stop finding. */
export class DrawingProblem extends Error {
  override readonly name = 'DrawingProblem';
  /** The option that would help, for example `unit`; `file` when only another file does. */
  readonly field: string;

  constructor(says: string, field = 'file') {
    super(says);
    this.field = field;
  }
}
