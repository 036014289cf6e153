// The measuring card is fetched when a field is first taken in hand, so that the first script does not carry its pictures.
import type { ComponentType } from 'preact';
import { signal } from '@preact/signals';
import { useBench } from '../state/bench-context.js';
import type { Corner } from './places.js';

const card = signal<ComponentType<{ corner: Corner }> | undefined>(undefined);
let asked = false;

function ask(): void {
  if (asked) return;
  asked = true;
  import('./measuring-card.js').then(
    ({ MeasuringCard }) => {
      card.value = MeasuringCard;
    },
    () => {
      asked = false;
    },
  );
}

export function CardOnDemand({ corner }: { readonly corner: Corner }) {
  const bench = useBench();
  if (bench.focus.value === undefined) return null;
  ask();
  const Card = card.value;
  return Card === undefined ? null : <Card corner={corner} />;
}
