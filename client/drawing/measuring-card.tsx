// Where to put the caliper for the field in hand, in a corner of the drawing that it leaves free.
import { useBench } from '../state/bench-context.js';
import { CaliperSketch, SKETCH_WORDS, sketchOf } from './caliper-sketch.js';
import type { Corner } from './places.js';

export function MeasuringCard({ corner }: { readonly corner: Corner }) {
  const bench = useBench();
  const path = bench.focus.value?.field;
  const view = path === undefined ? undefined : bench.viewOf(path).value;
  if (view === undefined) return null;
  const { field, value } = view;
  const sketch = sketchOf(field, value);
  return (
    <aside class={`card ${corner.across} ${corner.down}`} aria-label="Measuring">
      {sketch !== undefined && <CaliperSketch name={sketch} />}
      <div>
        <h3>{field.title}</h3>
        <p id="card-words">
          {field.kind === 'measure' && sketch !== undefined
            ? SKETCH_WORDS[sketch]
            : (field.measuring ?? field.help)}
        </p>
      </div>
    </aside>
  );
}
