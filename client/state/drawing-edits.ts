// What is done along the shapes of a drawing: which choices each has, and the drawing with another choice made.
import type { Drawing, DrawnOperation, DrawnShape } from '../../parts-library/model/index.js';

/** A drawing among the parameters is what reading made of a file; the family has proved it. */
export const isDrawing = (value: unknown): value is Drawing =>
  typeof value === 'object' && value !== null && 'source' in value && 'shapes' in value;

/** Half circles have a bulge of 1; two of them are a circle. */
const isCircle = ({ closed, vertices }: DrawnShape): boolean =>
  closed && vertices.length === 2 && vertices.every(({ bulge }) => Math.abs(Math.abs(bulge) - 1) < 1e-9);

/** What can be done along a shape. */
export function operationsOf(shape: DrawnShape): readonly DrawnOperation[] {
  if (shape.vertices.length === 1) return ['mark', 'ignore'];
  if (!shape.closed) return ['score', 'etch', 'ignore'];
  return ['outline', 'opening', ...(isCircle(shape) ? (['mark'] as const) : []), 'score', 'etch', 'ignore'];
}

/**
 * The drawing with an operation given to some shapes, where they can take it. A part has one outline: another one
 * that is named puts the first among what is ignored.
 */
export function withOperation(
  drawing: Drawing,
  isMeant: (shape: DrawnShape) => boolean,
  operation: DrawnOperation,
): Drawing {
  return {
    ...drawing,
    shapes: drawing.shapes.map((shape): DrawnShape => {
      if (isMeant(shape)) return operationsOf(shape).includes(operation) ? { ...shape, operation } : shape;
      return operation === 'outline' && shape.operation === 'outline'
        ? { ...shape, operation: 'ignore' }
        : shape;
    }),
  };
}

/** A layer with what is done along its shapes; the outline stands apart. */
export interface DrawnLayer {
  readonly name: string;
  readonly count: number;
  /** Undefined where its shapes differ. */
  readonly operation: DrawnOperation | undefined;
  readonly choices: readonly DrawnOperation[];
}

const ORDER: readonly DrawnOperation[] = ['opening', 'mark', 'score', 'etch', 'ignore'];

/** Shapes of a layer but for the outline, which only a hand names. */
export const isOnLayer =
  (name: string) =>
  (shape: DrawnShape): boolean =>
    shape.layer === name && shape.operation !== 'outline';

export function layersOf({ shapes }: Drawing): readonly DrawnLayer[] {
  const names = [...new Set(shapes.map(({ layer }) => layer))];
  return names.flatMap((name): readonly DrawnLayer[] => {
    const own = shapes.filter(isOnLayer(name));
    const [first] = own;
    if (first === undefined) return [];
    const same = own.every(({ operation }) => operation === first.operation);
    const possible = new Set(own.flatMap(operationsOf));
    return [
      {
        name,
        count: own.length,
        operation: same ? first.operation : undefined,
        choices: ORDER.filter((operation) => possible.has(operation)),
      },
    ];
  });
}

/** What is done on each layer as the command line says it; a layer of which that is not true as a whole is left out. */
export function operationsByLayer(
  drawing: Drawing,
): readonly (readonly [layer: string, operation: string])[] {
  const names = [...new Set(drawing.shapes.map(({ layer }) => layer))];
  return names.flatMap((name): readonly (readonly [string, string])[] => {
    const own = drawing.shapes.filter(({ layer }) => layer === name).map(({ operation }) => operation);
    const isCut = own.every((operation) => operation === 'outline' || operation === 'opening');
    if (isCut) return [[name, 'cut']];
    const [first] = own;
    return first !== undefined && own.every((operation) => operation === first) ? [[name, first]] : [];
  });
}
