// The control of one field, the same on the drawing and in the plain list: an input with ready-made values, or a choice.
import type { Field } from '../../parts-library/parts/index.js';
import type { FieldView } from '../state/field-views.js';
import { useBench } from '../state/bench-context.js';

export interface ControlIds {
  readonly id: string;
  /** Elements that explain the control: help, echo, message. */
  readonly describedBy: string;
}

type Where = 'drawing' | 'list';

const HOLE_WAYS = ['clearance', 'tapped', 'drill'];

/** Ready-made values of a field, for its list of suggestions. */
const suggestionsOf = (field: Field): readonly string[] =>
  field.kind === 'holes' ? HOLE_WAYS : field.kind === 'measure' ? [] : (field.suggestions ?? []);

function ChoiceControl(props: {
  readonly view: FieldView;
  readonly ids: ControlIds;
  readonly where: Where;
  readonly label?: string;
}) {
  const bench = useBench();
  const { view, ids, where, label } = props;
  const { field } = view;
  return (
    <select
      id={ids.id}
      value={view.text}
      aria-label={label}
      aria-describedby={ids.describedBy}
      aria-invalid={view.problem !== undefined}
      onFocus={() => bench.enter(field.path, where)}
      onBlur={() => bench.leave(field.path)}
      onChange={(event) => bench.type(field.path, event.currentTarget.value)}
    >
      {field.optional && <option value="">not given</option>}
      {field.choices?.map((choice) => (
        <option key={choice.value} value={choice.value}>
          {choice.label}
        </option>
      ))}
    </select>
  );
}

/** `label` names the control where no label element does. */
export function FieldInput(props: {
  readonly view: FieldView;
  readonly ids: ControlIds;
  readonly where: Where;
  readonly label?: string;
  /** Shown in place of a value that is not given: what the drawing derives instead. */
  readonly ghost?: string;
}) {
  const bench = useBench();
  const { view, ids, where, label, ghost } = props;
  const { field } = view;
  if (field.kind === 'choice') return <ChoiceControl {...props} />;
  const suggestions = suggestionsOf(field);
  const listId = `${ids.id}-ready`;
  return (
    <>
      <input
        id={ids.id}
        type="text"
        value={view.text}
        placeholder={field.optional ? (ghost ?? 'not given') : ''}
        aria-label={label}
        aria-describedby={ids.describedBy}
        aria-invalid={view.problem !== undefined}
        list={suggestions.length > 0 ? listId : undefined}
        autocomplete="off"
        spellcheck={false}
        onFocus={(event) => {
          bench.enter(field.path, where);
          event.currentTarget.select();
        }}
        onBlur={() => bench.leave(field.path)}
        onInput={(event) => bench.type(field.path, event.currentTarget.value)}
        onKeyDown={(event) => {
          // Back to the last good value.
          if (event.key === 'Escape' && view.problem !== undefined) bench.undo();
        }}
      />
      {suggestions.length > 0 && (
        <datalist id={listId}>
          {suggestions.map((value) => (
            <option key={value} value={value} />
          ))}
        </datalist>
      )}
    </>
  );
}
