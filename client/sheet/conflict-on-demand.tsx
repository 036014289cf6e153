// The choice between two versions of a job is fetched when there is one to make.
import type { ComponentType } from 'preact';
import { signal } from '@preact/signals';
import { useBench } from '../state/bench-context.js';

const conflict = signal<ComponentType | undefined>(undefined);
let asked = false;

function ask(): void {
  if (asked) return;
  asked = true;
  import('./conflict.js').then(
    ({ Conflict }) => {
      conflict.value = Conflict;
    },
    () => {
      asked = false;
    },
  );
}

export function ConflictOnDemand() {
  const bench = useBench();
  if (bench.saver.state.value.kind !== 'conflict') return null;
  ask();
  const Conflict = conflict.value;
  return Conflict === undefined ? null : <Conflict />;
}
