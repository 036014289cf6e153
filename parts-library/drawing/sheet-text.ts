// Texts of the sheet that stand in a given width: made narrower when too long, cut short when still too long.
import { cornersOf } from './boxes.js';
import type { Role, Text } from './display-list.js';
import { boxOfText, textWidth, writable, type Face } from './measure-text.js';
import { round, roundCorners, roundPoint } from './to-sheet.js';

export type { Face };

export interface FittedText {
  readonly text: string;
  readonly face: Face;
  readonly size: number;
}

/** Lettering is never made smaller than this share to fit. */
const LEAST_SHARE = 0.75;

/**
 * A text that fits a width: first in the condensed face, then smaller, down to three quarters, then cut short
 * with an ellipsis.
 */
export function fitText(text: string, face: Face, size: number, width: number): FittedText {
  const shown = writable(text);
  if (textWidth(shown, face, size) <= width) return { text: shown, face, size };
  const share = width / textWidth(shown, 'condensed', size);
  if (share >= LEAST_SHARE)
    return { text: shown, face: 'condensed', size: size * Math.min(1, share) * 0.999 };
  const small = size * LEAST_SHARE;
  let kept = shown;
  while (kept !== '' && textWidth(`${kept.trimEnd()}…`, 'condensed', small) > width) kept = kept.slice(0, -1);
  return { text: kept === '' ? '' : `${kept.trimEnd()}…`, face: 'condensed', size: small };
}

/** A level text of the sheet from its start on the baseline. */
export function drawText(role: Role, { text, face, size }: FittedText, x: number, y: number): Text {
  const box = boxOfText(x, y, 'start', size, textWidth(text, face, size));
  return {
    kind: 'text',
    role,
    at: roundPoint(x, y),
    anchor: 'start',
    degrees: 0,
    size: round(size),
    face,
    text,
    box: roundCorners(cornersOf(box)),
  };
}
