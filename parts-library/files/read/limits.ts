// How much of a drawing is read before it is refused: what a person draws stays far below, what is built to stall does not.

export const READ_LIMITS = {
  /** Characters of the file. A crest of ten thousand arcs takes about one million. */
  characters: 12_000_000,
  /** Pieces of line after blocks and copies have been laid out. */
  pieces: 40_000,
  /** Blocks and copies laid out, empty ones too. */
  copies: 20_000,
  /** Blocks within blocks, copies within copies, groups within groups. */
  depth: 64,
  /** XML elements. */
  elements: 100_000,
  /** Control or fit points of one curve. */
  curvePoints: 5_000,
  degree: 11,
  /** Arcs that curves come to; what a part holds is less still. */
  arcs: 10_000,
  /** Farthest coordinate of a file, in its own unit. */
  coordinate: 1e9,
} as const;
