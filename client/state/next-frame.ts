// The turn before each picture: what follows from a keystroke is worked out and shown there, once for all keystrokes
// since the picture before. The drawing itself does not wait for it.
import { effect, signal, type ReadonlySignal } from '@preact/signals';

type Turn = () => void;

const takings: Turn[] = [];
const renders: Turn[] = [];
let asked = false;

function doAll(turns: Turn[]): void {
  for (let turn = turns.shift(); turn !== undefined; turn = turns.shift()) turn();
}

/** Values are taken over first, one from another; then what shows them is rendered. */
function turnFrame(): void {
  doAll(takings);
  doAll(renders);
  asked = false;
  // Rendering may have changed a value.
  if (takings.length > 0 || renders.length > 0) ask();
}

function ask(): void {
  if (asked) return;
  asked = true;
  // Where there are no pictures nothing is worth waiting for.
  if (typeof requestAnimationFrame === 'undefined') turnFrame();
  else requestAnimationFrame(turnFrame);
}

/** Renders with the next picture. */
export function renderInNextFrame(render: Turn): void {
  renders.push(render);
  ask();
}

export interface Followed<T> {
  readonly value: ReadonlySignal<T>;
  readonly stop: () => void;
}

/** A signal that takes its source's value over with the next picture. */
export function followInNextFrame<T>(source: ReadonlySignal<T>): Followed<T> {
  const followed = signal(source.peek());
  let waiting = false;
  const stop = effect(() => {
    if (source.value === followed.peek() || waiting) return;
    waiting = true;
    takings.push(() => {
      waiting = false;
      followed.value = source.peek();
    });
    ask();
  });
  return { value: followed, stop };
}
