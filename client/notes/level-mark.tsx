// The figure around a note's number: octagon for stop, diamond for caution, circle for note; the same as on the drawing.
import type { Level } from '../../parts-library/model/index.js';

export const LEVEL_WORDS: Readonly<Record<Exclude<Level, 'pass'>, string>> = {
  stop: 'Stop',
  caution: 'Caution',
  note: 'Note',
};

const OUTLINES: Readonly<Record<Exclude<Level, 'pass'>, string>> = {
  stop: 'M9.4 2h13.2L32 11.4v9.2L22.6 30H9.4L0 20.6v-9.2z',
  caution: 'M16 0.5L31.5 16L16 31.5L0.5 16z',
  note: 'M16 2.5a13.5 13.5 0 1 1 0 27a13.5 13.5 0 1 1 0-27z',
};

export function LevelMark({
  level,
  number,
}: {
  readonly level: Exclude<Level, 'pass'>;
  readonly number: number;
}) {
  return (
    <svg class={`level-mark level-${level}`} viewBox="-1 -1 34 34" width="30" height="30" aria-hidden="true">
      <path d={OUTLINES[level]} />
      <text x="16" y="21.2" text-anchor="middle">
        {number}
      </text>
    </svg>
  );
}
