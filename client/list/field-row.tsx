// One line of the plain list: label, input, what was understood in both units, and what is wrong with it.
import { useBench } from '../state/bench-context.js';
import { FieldInput } from './field-input.js';

export function FieldRow({ path }: { readonly path: string }) {
  const bench = useBench();
  const view = bench.viewOf(path).value;
  if (view === undefined) return null;
  const id = `list-${path}`;
  const { field, problem } = view;
  const focused = bench.focus.value?.field === path;
  const wide = field.kind === 'measure' || field.kind === 'text';
  return (
    <div
      class={`field kind-${field.kind}${wide ? ' wide' : ''}${focused ? ' focused' : ''}${problem === undefined ? '' : ' broken'}${view.isStart ? ' start' : ''}`}
    >
      <label for={id}>{field.title}</label>
      <FieldInput view={view} ids={{ id, describedBy: `${id}-echo ${id}-problem ${id}-help` }} where="list" />
      <p class="echo" id={`${id}-echo`}>
        {view.echo.map((line) => (
          <span key={line}>{line}</span>
        ))}
        {view.isStart && <span class="start-word">starting value</span>}
      </p>
      <p class="problem" id={`${id}-problem`} role="status">
        {problem}
      </p>
      <p class="heard-only" id={`${id}-help`}>
        {field.help} {field.measuring}
      </p>
    </div>
  );
}
