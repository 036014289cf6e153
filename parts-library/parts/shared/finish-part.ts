// The last steps of drawing: nothing may stick out of the plate, the label finds its place, the part gets its name.
import {
  containsContour,
  containsPoint,
  nearestOnContour,
  type Contour,
  type Point,
} from '../../geometry/index.js';
import { isCut, isMark, isOpening, type Feature, type Part, type Staged } from '../../model/index.js';
import type { Entry } from '../fields/index.js';
import { etchLabel, noRoomForLabel, placesOver } from './label.js';
import { refusal, type Refusal } from './resolved.js';

/** Plate of any family. */
export interface PlateParameters {
  readonly label?: string | undefined;
  readonly labelHeight: Entry;
  readonly thickness: Entry;
  readonly material: string;
}

/**
 * The first opening or drilled mark that is not wholly inside the outline, as a refusal.
 * @param fieldOf the parameter that moves a feature
 */
export function refuseStray(
  outline: Contour,
  features: readonly Feature[],
  fieldOf: (feature: Feature) => string,
): Refusal | undefined {
  const stray = features.find((feature) => {
    if (isOpening(feature)) return !containsContour(outline, feature.contour);
    if (!isMark(feature)) return false;
    const room = nearestOnContour(outline, feature.at).distance;
    return containsPoint(outline, feature.at) !== 'inside' || room <= (feature.hole?.size ?? 0) / 2;
  });
  return stray === undefined
    ? undefined
    : refusal(
        fieldOf(stray),
        `${stray.name} runs out of the plate; a place further in, a smaller one, or a larger plate would do.`,
      );
}

/**
 * Features to a part, with its label.
 * @param places where the label may stand, best first; all over the plate when left out
 */
export function finishPart(
  family: string,
  name: string,
  plain: readonly Feature[],
  p: PlateParameters,
  places: readonly Point[] = [],
): Staged<Part> {
  const label = etchLabel(p.label, p.labelHeight.mm, plain, [...places, ...placesOver(plain.filter(isCut))]);
  return {
    value: {
      family,
      name,
      features: [...plain, ...(label ?? [])],
      material: p.material,
      thickness: p.thickness.mm,
      quantity: 1,
    },
    findings: label === undefined ? [noRoomForLabel(p.label ?? '')] : [],
  };
}
