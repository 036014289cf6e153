// Drive numbers are fetched when they are first asked for, so that the first script does not carry them.
import type { ComponentType } from 'preact';
import { useEffect } from 'preact/hooks';
import { signal } from '@preact/signals';

type State = { readonly sheet: ComponentType } | { readonly says: string };

const state = signal<State>({ says: 'Drive numbers are being fetched.' });
let asked = false;

function ask(): void {
  if (asked) return;
  asked = true;
  import('./drive-sheet.js').then(
    ({ DriveSheet }) => {
      state.value = { sheet: DriveSheet };
    },
    () => {
      asked = false;
      state.value = {
        says: 'Drive numbers could not be fetched: the server does not answer. Reload to try again.',
      };
    },
  );
}

export function DriveOnDemand() {
  useEffect(ask, []);
  const now = state.value;
  if ('sheet' in now) {
    const { sheet: Sheet } = now;
    return <Sheet />;
  }
  return (
    <p class="waiting" role="status">
      {now.says}
    </p>
  );
}
