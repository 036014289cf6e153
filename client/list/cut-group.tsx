// How this plate is cut, in the plain list: class, kerf, speed, pierce delay; the chart's value until another is given.
import { useBench } from '../state/bench-context.js';
import type { CutFigure } from '../state/cut.js';
import { Echo } from './echo.js';

function FigureRow({ figure }: { readonly figure: CutFigure }) {
  const { cut } = useBench();
  const { field, text, echo, problem, isStart } = figure;
  const id = `cut-${field.name}`;
  return (
    <div class={`field${problem === undefined ? '' : ' broken'}${isStart ? ' start' : ''}`}>
      <div class="words">
        <label for={id}>{field.title}</label>
        <p class="echo" id={`${id}-echo`}>
          <Echo lines={echo} />
          {isStart && <span>starting value</span>}
        </p>
      </div>
      <input
        id={id}
        type="text"
        value={text}
        aria-describedby={`${id}-echo ${id}-problem ${id}-help`}
        aria-invalid={problem !== undefined}
        autocomplete="off"
        spellcheck={false}
        onFocus={(event) => event.currentTarget.select()}
        onInput={(event) => cut.type(field.name, event.currentTarget.value)}
        onBlur={() => cut.settle(field.name)}
      />
      <p class="problem" id={`${id}-problem`} role="status">
        {problem}
      </p>
      <p class="heard-only" id={`${id}-help`}>
        {field.help} {field.measuring}
      </p>
    </div>
  );
}

export function CutGroup() {
  const { cut } = useBench();
  return (
    <section class="group">
      <h3>Cut, for this material and thickness</h3>
      <div class="field kind-choice">
        <label for="cut-class">Class</label>
        <select
          id="cut-class"
          value={cut.processClass.value}
          onChange={(event) => cut.choose(event.currentTarget.value)}
        >
          {cut.classes.map((id) => (
            <option key={id} value={id}>
              {id}
            </option>
          ))}
        </select>
      </div>
      {cut.figures.value.map((figure) => (
        <FigureRow key={figure.field.name} figure={figure} />
      ))}
    </section>
  );
}
