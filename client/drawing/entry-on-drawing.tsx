// A dimension's control, laid over its text on the drawing and turned with it.
import { FieldInput } from '../list/field-input.js';
import { useBench } from '../state/bench-context.js';
import { EntryPlate } from './entry-plate.js';
import type { Place } from './places.js';

/** Least width of what takes a finger, CSS pixels. */
const TARGET = 44;

export function EntryOnDrawing({ place }: { readonly place: Place }) {
  const bench = useBench();
  const view = bench.viewOf(place.field).value;
  if (view === undefined) return null;
  const id = `drawn-${place.field}`;
  const focus = bench.focus.value;
  const open = focus?.field === place.field && focus.where === 'drawing';
  const broken = view.problem !== undefined;
  return (
    <>
      <div
        class={`entry${open ? ' open' : ''}${broken ? ' broken' : ''}${focus?.field === place.field ? ' lit' : ''}`}
        style={{
          translate: `calc(${place.x}px - 50%) calc(${place.y}px - 50%)`,
          width: `${Math.max(TARGET, place.width + 12)}px`,
          height: `${place.reach}px`,
          '--text-width': `${place.width + 12}px`,
          rotate: `${place.degrees}deg`,
        }}
      >
        <FieldInput
          view={view}
          ids={{ id, describedBy: `${id}-echo ${id}-problem card-words` }}
          where="drawing"
          ghost={place.text}
          label={`${view.field.title}, on the drawing ${place.text}`}
        />
      </div>
      {(open || broken) && <EntryPlate view={view} place={place} room={bench.print.room.value} id={id} />}
    </>
  );
}
