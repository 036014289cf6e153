// At an entry in hand: what was understood, or what was not and what is accepted.
import { Echo } from '../list/echo.js';
import type { FieldView } from '../state/field-views.js';
import type { Room } from '../state/print.js';
import type { Place } from './places.js';

/** The plate's own half width, and the room it needs below the entry, CSS pixels; its style sets the same. */
const HALF = 160;
const DEEP = 110;
/** Between entry and plate. */
const GAP = 8;
/** Half height of an open entry. */
const OPEN_HALF = 19;

/** Keeps the plate inside the drawing: below its entry, or above where there is no room below. */
function plateStyle(place: Place, room: Room): Readonly<Record<string, string>> {
  const turn = (place.degrees * Math.PI) / 180;
  const halfWidth = Math.max(80, place.width / 2 + 6);
  const reach = Math.abs(halfWidth * Math.sin(turn)) + Math.abs(OPEN_HALF * Math.cos(turn)) + GAP;
  const x = Math.min(Math.max(place.x, HALF + 4), Math.max(HALF + 4, room.width - HALF - 4));
  const below = place.y + reach + DEEP < room.height;
  return below
    ? { left: `${x}px`, top: `${place.y + reach}px` }
    : { left: `${x}px`, bottom: `${room.height - place.y + reach}px` };
}

export function EntryPlate(props: {
  readonly view: FieldView;
  readonly place: Place;
  readonly room: Room;
  readonly id: string;
}) {
  const { view, place, room, id } = props;
  return (
    <div class={`plate${view.problem === undefined ? '' : ' broken'}`} style={plateStyle(place, room)}>
      <p class="problem" id={`${id}-problem`} role="status">
        {view.problem}
      </p>
      <p class="echo" id={`${id}-echo`}>
        {view.problem === undefined && <Echo lines={view.echo} gives={view.gives.slice(0, 1)} />}
      </p>
    </div>
  );
}
