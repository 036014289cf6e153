// One line of the plain list: label, input, what was understood in both units, and what is wrong with it.
import { useComputed } from '@preact/signals';
import { useBench } from '../state/bench-context.js';
import { DrawingRow } from './drawing-row.js';
import { Echo } from './echo.js';
import { FieldInput } from './field-input.js';
import { WaySelect } from './way-select.js';

export function FieldRow({ path }: { readonly path: string }) {
  const bench = useBench();
  const view = bench.viewOf(path).value;
  const focused = useComputed(() => bench.focus.value?.field === path).value;
  if (view === undefined) return null;
  const id = `list-${path}`;
  const { field, problem } = view;
  if (field.kind === 'drawing') return <DrawingRow view={view} id={id} />;
  const wide = field.kind === 'measure' || field.kind === 'text';
  return (
    <div
      class={`field kind-${field.kind}${wide ? ' wide' : ''}${focused ? ' focused' : ''}${problem === undefined ? '' : ' broken'}${view.isStart ? ' start' : ''}`}
    >
      <div class="words">
        <label for={id}>{field.title}</label>
        <p class="echo" id={`${id}-echo`}>
          <Echo lines={view.echo} gives={view.gives} />
          {view.isStart && <span class="start-word">starting value</span>}
        </p>
      </div>
      <FieldInput view={view} ids={{ id, describedBy: `${id}-echo ${id}-problem ${id}-help` }} where="list" />
      {field.kind === 'measure' && <WaySelect view={view} id={`${id}-way`} />}
      <p class="problem" id={`${id}-problem`} role="status">
        {problem}
      </p>
      <p class="heard-only" id={`${id}-help`}>
        {field.help} {field.measuring}
      </p>
    </div>
  );
}
