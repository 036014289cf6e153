// What is done along the lines of a drawing: by layer, and shape by shape where a layer holds several things.
import type { Drawing, DrawnOperation, DrawnShape } from '../../parts-library/model/index.js';
import { useBench } from '../state/bench-context.js';
import { isOnLayer, layersOf, operationsOf, withOperation } from '../state/drawing-edits.js';

const WORDS: Readonly<Record<DrawnOperation, string>> = {
  outline: 'outline',
  opening: 'cut out',
  score: 'score',
  etch: 'etch',
  mark: 'centre mark',
  ignore: 'leave out',
};

const isOperation = (text: string): text is DrawnOperation => Object.hasOwn(WORDS, text);

/** Shapes that are listed one by one; of more, the layers tell. */
const MOST_LISTED = 80;

function Choice(props: {
  readonly id: string;
  readonly label: string;
  readonly value: DrawnOperation | undefined;
  readonly choices: readonly DrawnOperation[];
  readonly choose: (operation: DrawnOperation) => void;
}) {
  const { id, label, value, choices, choose } = props;
  return (
    <div class="field kind-choice">
      <label for={id}>{label}</label>
      <select
        id={id}
        value={value ?? ''}
        onChange={(event) => {
          const chosen = event.currentTarget.value;
          if (isOperation(chosen)) choose(chosen);
        }}
      >
        {value === undefined && <option value="">various</option>}
        {choices.map((operation) => (
          <option key={operation} value={operation}>
            {WORDS[operation]}
          </option>
        ))}
      </select>
    </div>
  );
}

/** `circle 3 ⌀9`, `contour 1 160 × 90`. */
function nameOf({ id, closed, vertices }: DrawnShape): string {
  const name = id.replace('.', ' ');
  const [a, b] = vertices;
  if (!id.startsWith('circle') || !closed || a === undefined || b === undefined) return name;
  return `${name} ⌀${Number(Math.hypot(a.x - b.x, a.y - b.y).toFixed(2))}`;
}

export function DrawingLayers({ path, drawing }: { readonly path: string; readonly drawing: Drawing }) {
  const bench = useBench();
  const set = (isMeant: (shape: DrawnShape) => boolean, operation: DrawnOperation): void =>
    bench.setDrawing(path, withOperation(drawing, isMeant, operation));
  const listed = drawing.shapes.slice(0, MOST_LISTED);
  return (
    <>
      {layersOf(drawing).map(({ name, count, operation, choices }) => (
        <Choice
          key={name}
          id={`layer-${name}`}
          label={`Layer ${name} (${count})`}
          value={operation}
          choices={choices}
          choose={(chosen) => set(isOnLayer(name), chosen)}
        />
      ))}
      <details class="folded">
        <summary>Shape by shape</summary>
        {listed.map((shape) => (
          <Choice
            key={shape.id}
            id={`shape-${shape.id}`}
            label={nameOf(shape)}
            value={shape.operation}
            choices={operationsOf(shape)}
            choose={(chosen) => set(({ id }) => id === shape.id, chosen)}
          />
        ))}
        {drawing.shapes.length > listed.length && (
          <p class="small">And {drawing.shapes.length - listed.length} more; their layers stand above.</p>
        )}
      </details>
    </>
  );
}
