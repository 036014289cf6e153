// The row that makes a part of a drawing that was brought in.
import { freshJson, isObject } from './json-guard.js';
import type { Drawing, JsonObject } from '../model/index.js';
import type { Row } from './types.js';

/** Id of the family that draws what was brought in. */
export const DRAWING_FAMILY = 'own-outline';

/** Called what the file is called, without its ending. */
const nameOf = ({ source }: Drawing): string => source.name.replace(/\.[A-Za-z]{2,4}$/, '') || 'Own outline';

/**
 * A row of one, without its id.
 * @example drawingRow(drawing).name // 'bracket' for bracket.dxf
 */
export function drawingRow(
  drawing: Drawing,
): Omit<Row, 'id' | 'family'> & { readonly family: typeof DRAWING_FAMILY } {
  return {
    family: DRAWING_FAMILY,
    name: nameOf(drawing),
    quantity: 1,
    parameters: drawingParameters(drawing),
  };
}

/** The drawing as parameters of the family, everything else at its start. */
export function drawingParameters(drawing: Drawing): JsonObject {
  const json = freshJson({ drawing });
  return isObject(json) ? json : {};
}
