// What belongs to the field in hand: where to put the caliper, what was understood, and what is wrong with the entry.
import { useBench } from '../state/bench-context.js';
import { CaliperSketch, sketchOf } from './caliper-sketch.js';
import type { Corner } from './places.js';

export function MeasuringCard({ corner }: { readonly corner: Corner }) {
  const bench = useBench();
  const path = bench.focus.value?.field;
  const view = path === undefined ? undefined : bench.viewOf(path).value;
  if (view === undefined) return null;
  const { field, echo, problem, value } = view;
  const sketch = sketchOf(field, value);
  return (
    <aside
      class={`card ${corner.across} ${corner.down}${problem === undefined ? '' : ' broken'}`}
      aria-label="Measuring"
    >
      {sketch !== undefined && <CaliperSketch name={sketch} />}
      <div>
        <h3>{field.title}</h3>
        <p class="card-problem" id="card-problem" role="status">
          {problem}
        </p>
        <p class="echo" id="card-echo">
          {problem === undefined && echo.map((line) => <span key={line}>{line}</span>)}
        </p>
        <p id="card-words">{field.measuring ?? field.help}</p>
      </div>
    </aside>
  );
}
