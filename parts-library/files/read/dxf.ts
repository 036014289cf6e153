// A DXF file as strokes: entities of the model, blocks laid out however deep, in the file's own unit.
import { after, IDENTITY, movePoint, shift, type Affine } from './affine.js';
import { copiesOf } from './dxf-copies.js';
import { lineOfEntity, placeOfPoint } from './dxf-entities.js';
import { dxfSections } from './dxf-groups.js';
import { dxfRecords, type DxfRecords, type EntityRecord } from './dxf-records.js';
import { READ_LIMITS } from './limits.js';
import { movePiece, type Stroke } from './pieces.js';
import { DrawingProblem } from './problem.js';
import type { DrawnPoint, Sketch } from './sketch.js';

/** $INSUNITS of the DXF reference: lengths of one unit in mm. 0 means that the file does not say. */
const INSERTION_UNITS: Readonly<{ [code: string]: readonly [name: string, millimetres: number] }> = {
  '1': ['in', 25.4],
  '2': ['ft', 304.8],
  '4': ['mm', 1],
  '5': ['cm', 10],
  '6': ['m', 1000],
  '8': ['microinch', 25.4e-6],
  '9': ['mil', 0.0254],
  '10': ['yd', 914.4],
  '13': ['micrometre', 1e-3],
  '14': ['dm', 100],
};

/** Layer of things that take that of the block's place. */
const BLOCKS_OWN = '0';

interface Lists {
  readonly strokes: Stroke[];
  readonly points: DrawnPoint[];
  readonly passedOver: Map<string, number>;
  readonly notes: Set<string>;
  pieces: number;
  copies: number;
}

/** Not on the model: paper space (group 67), or made invisible (group 60). */
const isShown = ({ groups }: EntityRecord): boolean =>
  !groups.some(({ code, value }) => (code === 67 || code === 60) && value === 1);

function layOut(
  records: readonly EntityRecord[],
  move: Affine,
  layerOfBlock: string,
  inside: readonly string[],
  all: DxfRecords,
  lists: Lists,
): void {
  for (const record of records) {
    if (!isShown(record)) continue;
    const layer = record.layer === BLOCKS_OWN ? layerOfBlock : record.layer;
    if (record.type === 'INSERT') {
      layOutBlock(record, move, layer, inside, all, lists);
      continue;
    }
    if (record.type === 'POINT') {
      lists.points.push({ layer, at: movePoint(move, placeOfPoint(record)) });
      countPieces(lists, 1);
      continue;
    }
    const line = lineOfEntity(record);
    if (line === undefined) {
      count(lists.passedOver, `${record.type} tilted in space`);
      continue;
    }
    if (line.note !== undefined) lists.notes.add(line.note);
    countPieces(lists, line.pieces.length);
    lists.strokes.push({
      layer,
      pieces: line.pieces.map((piece) => movePiece(move, piece)),
      closed: line.closed,
    });
  }
}

function layOutBlock(
  record: EntityRecord,
  move: Affine,
  layer: string,
  inside: readonly string[],
  all: DxfRecords,
  lists: Lists,
): void {
  const copies = copiesOf(record);
  if (copies === undefined) {
    count(lists.passedOver, 'INSERT tilted in space');
    return;
  }
  const block = all.blocks.get(copies.block);
  if (block === undefined) {
    lists.notes.add(`Block "${copies.block.slice(0, 60)}" is not in the file; its places were left empty.`);
    return;
  }
  if (inside.includes(copies.block))
    throw new DrawingProblem(`Block "${copies.block.slice(0, 60)}" holds itself; it cannot be laid out.`);
  if (inside.length >= READ_LIMITS.depth)
    throw new DrawingProblem(`Blocks lie more than ${READ_LIMITS.depth} deep in each other; explode some.`);
  for (const copy of copies.moves) {
    lists.copies += 1;
    if (lists.copies > READ_LIMITS.copies)
      throw new DrawingProblem(
        `Blocks come to more than ${READ_LIMITS.copies} copies laid out; bring in what is to be cut by itself.`,
      );
    const placed = after(move, after(copy, shift(-block.base.x, -block.base.y)));
    layOut(block.records, placed, layer, [...inside, copies.block], all, lists);
  }
}

const count = (counts: Map<string, number>, what: string): void => {
  counts.set(what, (counts.get(what) ?? 0) + 1);
};

function countPieces(lists: Lists, added: number): void {
  lists.pieces += added;
  if (lists.pieces > READ_LIMITS.pieces)
    throw new DrawingProblem(
      `The drawing has more than ${READ_LIMITS.pieces} lines and arcs; bring in what is to be cut by itself.`,
    );
}

/** @throws DrawingProblem */
export function readDxf(text: string): Sketch {
  const { header, hiddenLayers, blocks, entities } = dxfSections(text);
  const records = dxfRecords(blocks, entities);
  const lists: Lists = {
    strokes: [],
    points: [],
    passedOver: new Map(records.passedOver),
    notes: new Set(),
    pieces: 0,
    copies: 0,
  };
  layOut(records.entities, IDENTITY, BLOCKS_OWN, [], records, lists);
  const unit = INSERTION_UNITS[header.get('$INSUNITS') ?? ''];
  return {
    strokes: lists.strokes,
    points: lists.points,
    unit: unit === undefined ? undefined : { name: unit[0], millimetres: unit[1] },
    hiddenLayers,
    passedOver: lists.passedOver,
    notes: [...lists.notes],
  };
}
