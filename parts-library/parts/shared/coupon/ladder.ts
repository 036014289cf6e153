// A ladder: slots one above the other in a plate, each with its setting etched beside it, and a heading on top.
import { rectangleContour, slotContour, type Contour, type Point } from '../../../geometry/index.js';
import type { CutFeature, Feature } from '../../../model/index.js';
import { etched, textWidth } from './lettering.js';
import { metalBetween } from './setting.js';

/** One slot of a ladder. */
export interface Rung {
  /** `rung.3`. */
  readonly id: string;
  /** What a person calls it, with its setting: `slot 3, 0.5 s`. */
  readonly name: string;
  /** What is etched beside it. */
  readonly text: string;
}

export interface LadderQuestion {
  /** Words of the heading; they share a line where it is long enough. */
  readonly heading: readonly string[];
  readonly rungs: readonly Rung[];
  /** Straight part of each slot, and its width, mm. */
  readonly straight: number;
  readonly slotWidth: number;
  readonly thickness: number;
  readonly labelHeight: number;
}

export interface PlacedRung extends Rung {
  /** Middle of the slot. */
  readonly at: Point;
  readonly contour: Contour;
}

export interface Ladder {
  readonly width: number;
  readonly height: number;
  readonly pitch: number;
  /** Straight part of the slots, mm. */
  readonly straight: number;
  readonly rungs: readonly PlacedRung[];
  readonly features: readonly Feature[];
}

/** One line where the heading fits, else one for each of its words. */
export function linesOf(heading: readonly string[], height: number, room: number): readonly string[] {
  const whole = heading.join(' ');
  return textWidth(whole, height) <= room ? [whole] : heading;
}

/** Room round lettering, mm. */
const ROUND_TEXT = 3;

/**
 * Lays a ladder out; origin at the plate's lower left, the first rung on top. The plate is as large as slots, etch and
 * the metal between them want.
 */
export function layLadder(question: LadderQuestion): Ladder {
  const { heading, rungs, straight, slotWidth, thickness, labelHeight } = question;
  const metal = metalBetween(thickness);
  const textRoom = Math.max(...rungs.map(({ text }) => textWidth(text, labelHeight)));
  const left = metal + textRoom + ROUND_TEXT;
  const slotLength = straight + slotWidth;
  const lines = linesOf(heading, labelHeight, slotLength + left - metal);
  const width = Math.ceil(
    Math.max(left + slotLength + metal, ...lines.map((line) => textWidth(line, labelHeight) + 2 * metal)),
  );
  const pitch = slotWidth + metal;
  const lineHeight = labelHeight + ROUND_TEXT;
  const top = lines.length * lineHeight + ROUND_TEXT;
  const height = Math.ceil(rungs.length * pitch + metal + top);
  const placed = rungs.map((rung, index): PlacedRung => {
    const y = height - top - metal - slotWidth / 2 - index * pitch;
    const from = { x: left + slotWidth / 2, y };
    const to = { x: left + slotWidth / 2 + straight, y };
    return {
      ...rung,
      at: { x: left + slotLength / 2, y },
      contour: slotContour(from, to, slotWidth, 'opening'),
    };
  });
  const outline: CutFeature = {
    id: 'outline',
    name: 'outline',
    purpose: 'outline',
    contour: rectangleContour({ centre: { x: width / 2, y: height / 2 }, width, height }, 'outline'),
  };
  return {
    width,
    height,
    pitch,
    straight,
    rungs: placed,
    features: [
      outline,
      ...placed.map(({ id, name, contour }): CutFeature => ({ id, name, purpose: 'opening', contour })),
      ...placed.flatMap(({ id, text, at }) =>
        etched(`${id}.etch`, `setting ${text}`, text, { x: metal + textRoom / 2, y: at.y }, labelHeight),
      ),
      ...lines.flatMap((line, index) =>
        etched(
          `heading.${index + 1}`,
          'heading',
          line,
          { x: width / 2, y: height - metal / 2 - labelHeight / 2 - index * lineHeight },
          labelHeight,
        ),
      ),
    ],
  };
}
