// What is done along the lines of a layer: as told, or as its name says in plain words.
/** An operation of a layer: `cut` leaves it to the nesting what is outline and what is opening. */
export type LayerOperation = 'cut' | 'score' | 'etch' | 'mark' | 'ignore';

export const LAYER_OPERATIONS: readonly LayerOperation[] = ['cut', 'score', 'etch', 'mark', 'ignore'];

/** Words in the name of a layer and what they mean, the first that fits; a word may go on (`engraving`). */
const WORDS: readonly (readonly [operation: LayerOperation, words: readonly string[]])[] = [
  ['score', ['score', 'scoring', 'bend', 'fold', 'crease']],
  ['etch', ['etch', 'engrav', 'text', 'label', 'letter']],
  ['mark', ['mark', 'punch', 'drill', 'spot']],
  ['cut', ['outline', 'opening', 'cut', 'hole', 'profile', 'contour']],
  [
    'ignore',
    [
      'dim',
      'annot',
      'note',
      'constr',
      'guide',
      'border',
      'frame',
      'sheet',
      'title',
      'hidden',
      'centreline',
      'centerline',
      'defpoint',
      'viewport',
    ],
  ],
];

/** The operation that a layer's name says; undefined when it says nothing. */
export function operationOfName(layer: string): LayerOperation | undefined {
  const words = layer
    .replaceAll(/([a-z])([A-Z])/g, '$1 $2')
    .toLowerCase()
    .split(/[^a-z]+/);
  return WORDS.find(([, starts]) =>
    words.some((word) => starts.some((start) => word.startsWith(start))),
  )?.[0];
}

/** A layer as it was found. */
export interface ReadLayer {
  readonly name: string;
  readonly operation: LayerOperation;
  /** Where that comes from: told, the layer's name, hidden in the file, or nothing said otherwise. */
  readonly because: 'told' | 'name' | 'hidden' | 'usual';
  /** Contours, lines and points on it. */
  readonly count: number;
}

/** What is done along a layer. Layers that the file hides are not made unless told. */
export function operationOfLayer(
  name: string,
  told: ReadonlyMap<string, LayerOperation>,
  hidden: ReadonlySet<string>,
): Omit<ReadLayer, 'name' | 'count'> {
  const given = told.get(name);
  if (given !== undefined) return { operation: given, because: 'told' };
  if (hidden.has(name)) return { operation: 'ignore', because: 'hidden' };
  const named = operationOfName(name);
  return named === undefined ? { operation: 'cut', because: 'usual' } : { operation: named, because: 'name' };
}
