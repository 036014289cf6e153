// The row that makes a part of a drawing that was brought in.
import type { Change } from './change.js';
import { renameRow, setParameter } from './edits.js';
import { freshJson, isObject } from './json-guard.js';
import type { Drawing, JsonObject } from '../model/index.js';
import type { Job, Row } from './types.js';

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

/**
 * Gives a row another drawing as one change. A row that is called what its family is called takes the file's name.
 * @param path the parameter that holds the drawing
 * @param unnamed what the family calls a row before anybody names it
 * @throws NoSuchRow
 */
export function bringInDrawing(
  job: Job,
  rowId: string,
  { path, drawing, unnamed }: { readonly path: string; readonly drawing: Drawing; readonly unnamed: string },
): Change {
  const set = setParameter(job, rowId, path, drawingParameters(drawing)['drawing']);
  const row = job.rows.find(({ id }) => id === rowId);
  const isUnnamed = row?.name.replace(/ \d+$/, '') === unnamed;
  const named = isUnnamed ? renameRow(job, rowId, nameOf(drawing)).patch : [];
  return {
    says: `Bring ${drawing.source.name} into ${row?.name ?? ''}`.slice(0, 200),
    patch: [...set.patch, ...named],
  };
}
