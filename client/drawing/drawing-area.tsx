// The drawing: the display list painted to the room it has, with a control over every dimension that can be set.
import { useEffect, useLayoutEffect, useMemo, useRef } from 'preact/hooks';
import { effect, useComputed } from '@preact/signals';
import { useBench } from '../state/bench-context.js';
import { steadyList } from '../state/steady.js';
import { EntryOnDrawing } from './entry-on-drawing.js';
import { CardOnDemand } from './card-on-demand.js';
import { createPainter } from './painter.js';
import { dimensionsOf, freeCorner, placesOf, type Place } from './places.js';

/** Room that the measuring card takes, CSS pixels; its width is set in the style sheet. */
const CARD = { width: 276, height: 150 };

/** Follows the size of the canvas, in whole pixels. */
function useRoom(canvas: { readonly current: HTMLDivElement | null }): void {
  const bench = useBench();
  useEffect(() => {
    const { current } = canvas;
    if (current === null) return undefined;
    const watcher = new ResizeObserver(([entry]) => {
      if (entry === undefined) return;
      const { width, height } = entry.contentRect;
      bench.print.room.value = { width: Math.floor(width), height: Math.floor(height) };
    });
    watcher.observe(current);
    return () => watcher.disconnect();
  }, [bench, canvas]);
}

function StateStrip() {
  const bench = useBench();
  const says = bench.print.brokenSays.value;
  return (
    <p class={`state-strip${says === undefined ? '' : ' broken'}`} role="status">
      {says}
    </p>
  );
}

/** A balloon that is pressed shows its note; by keyboard the note leads to its field instead. */
function showNote(pressed: EventTarget | null): void {
  const number = pressed instanceof SVGElement ? pressed.dataset['note'] : undefined;
  if (number === undefined) return;
  const note = document.getElementById(`note-${number}`);
  note?.querySelector('details')?.setAttribute('open', '');
  note?.scrollIntoView({ block: 'nearest' });
  note?.querySelector<HTMLElement>('summary')?.focus();
}

/** The drawing in words, for who cannot see it. */
const spokenDrawing = (name: string, places: readonly Place[]): string =>
  `Print of ${name}. Dimensions in the order of measuring: ${places.map(({ text }) => text).join('; ')}.`;

export function DrawingArea() {
  const bench = useBench();
  const canvas = useRef<HTMLDivElement>(null);
  useRoom(canvas);

  // Painted by a plain effect, which runs before the keystroke's handler ends; a hook's effect would wait for a frame.
  useLayoutEffect(() => {
    if (canvas.current === null) return undefined;
    const painter = createPainter(canvas.current);
    const stop = effect(() => {
      const list = bench.print.drawing.value;
      if (list !== undefined) painter.paint(list, dimensionsOf(list, bench.focus.value?.field));
    });
    return () => {
      stop();
      painter.remove();
    };
  }, [bench]);

  const places = useMemo(() => {
    let kept = new Map<string, Place>();
    return steadyList(() => {
      const list = bench.print.drawing.value;
      const found = list === undefined ? [] : placesOf(list);
      const focus = bench.focus.value;
      // A control in hand stays where it was when its dimension has just gone from the drawing.
      const held = focus?.where === 'drawing' ? kept.get(focus.field) : undefined;
      const missing = held !== undefined && !found.some((place) => place.field === held.field);
      const all = missing ? [...found, held] : found;
      kept = new Map(all.map((place) => [place.field, place]));
      return all;
    });
  }, [bench]);

  // Chosen when a field is taken in hand; a card that jumped with each keystroke would be in the way.
  const corner = useComputed(() => {
    const list = bench.print.drawing.peek();
    const field = bench.focus.value?.field;
    return list === undefined || field === undefined
      ? ({ across: 'left', down: 'bottom' } as const)
      : freeCorner(list, CARD, field);
  });

  return (
    <section
      class={`drawing${bench.print.brokenSays.value === undefined ? '' : ' broken'}`}
      aria-label="Drawing"
    >
      <div class="canvas" ref={canvas} onClick={(event) => showNote(event.target)} />
      <p class="heard-only">{spokenDrawing(bench.row.value?.name ?? '', places.value)}</p>
      {places.value.map((place) => (
        <EntryOnDrawing key={place.field} place={place} />
      ))}
      <StateStrip />
      <CardOnDemand corner={corner.value} />
    </section>
  );
}
