// Above the plain list of a part that belongs to a kit: the kit's numbers, what spans its members, and what is set by hand.
import { useBench } from '../state/bench-context.js';
import type { KitField } from '../state/kit.js';
import { Echo } from './echo.js';

function NumberRow({ number }: { readonly number: KitField }) {
  const { kit } = useBench();
  const { field, text, echo, problem } = number;
  const id = `kit-${field.path}`;
  const wide = field.kind === 'measure' || field.kind === 'lengths' || field.kind === 'text';
  return (
    <div class={`field${wide ? ' wide' : ''}${problem === undefined ? '' : ' broken'}`}>
      <div class="words">
        <label for={id}>{field.title}</label>
        <p class="echo" id={`${id}-echo`}>
          <Echo lines={echo} />
        </p>
      </div>
      {field.kind === 'choice' ? (
        <select
          id={id}
          value={text}
          aria-describedby={`${id}-echo ${id}-problem ${id}-help`}
          onChange={(event) => kit.type(field.path, event.currentTarget.value)}
        >
          {field.choices?.map((choice) => (
            <option key={choice.value} value={choice.value}>
              {choice.label}
            </option>
          ))}
        </select>
      ) : (
        <input
          id={id}
          type="text"
          value={text}
          aria-describedby={`${id}-echo ${id}-problem ${id}-help`}
          aria-invalid={problem !== undefined}
          autocomplete="off"
          spellcheck={false}
          onFocus={(event) => event.currentTarget.select()}
          onInput={(event) => kit.type(field.path, event.currentTarget.value)}
          onBlur={() => kit.settle()}
        />
      )}
      <p class="problem" id={`${id}-problem`} role="status">
        {problem}
      </p>
      <p class="heard-only" id={`${id}-help`}>
        {field.help} {field.measuring}
      </p>
    </div>
  );
}

/** Parameters of this part that no longer follow the kit, each with the way back. */
function ByHand() {
  const bench = useBench();
  const names = bench.kit.overridden.value;
  if (names.length === 0) return null;
  return (
    <ul class="by-hand">
      {names.map((name) => (
        <li key={name}>
          <strong>{bench.fieldOf(name)?.title ?? name}</strong> is set by hand.{' '}
          <button type="button" onClick={() => bench.kit.follow(name)}>
            Follow the kit
          </button>
        </li>
      ))}
    </ul>
  );
}

function Together() {
  const { derived, findings } = useBench().kit;
  return (
    <>
      {derived.value.length > 0 && (
        <dl class="follows">
          {derived.value.map(({ id, title, text }) => (
            <div key={id}>
              <dt>{title}</dt>
              <dd>{text}</dd>
            </div>
          ))}
        </dl>
      )}
      <ul class="kit-findings">
        {findings.value.map(({ code, level, title, says }) => (
          <li key={`${code} ${title}`} class={`level-${level}`}>
            <strong>
              {level === 'stop' ? 'Stop' : level === 'caution' ? 'Caution' : 'Note'}. {title}
            </strong>
            <p class="small">{says}</p>
          </li>
        ))}
      </ul>
    </>
  );
}

export function KitGroup() {
  const { kit } = useBench();
  const use = kit.use.value;
  if (use === undefined) return null;
  return (
    <section class="group kit" aria-label={`Kit: ${use.name}`}>
      <h3>Kit: {use.name}</h3>
      <p class="small">Numbers that its parts share; setting one here changes every part that uses it.</p>
      {kit.fields.value
        .filter(({ field }) => field.kind !== 'group')
        .map((number) => (
          <NumberRow key={number.field.path} number={number} />
        ))}
      <Together />
      <ByHand />
      <p class="group-switch">
        <button type="button" onClick={() => kit.remove()}>
          Remove the kit and its parts
        </button>
      </p>
    </section>
  );
}
