// The page: the rail of sheets, and the print on its sheet.
import { useEffect } from 'preact/hooks';
import { DriveOnDemand } from './drive/drive-on-demand.js';
import { DrawingArea } from './drawing/drawing-area.js';
import { PlainList } from './list/plain-list.js';
import { Notes } from './notes/notes.js';
import { Rail } from './rail/rail.js';
import { ConflictOnDemand } from './sheet/conflict-on-demand.js';
import { Empty } from './sheet/empty.js';
import { TitleBlock } from './sheet/title-block.js';
import { Zones } from './sheet/zones.js';
import { BenchContext } from './state/bench-context.js';
import type { Bench } from './state/bench.js';

/** Undo and redo by keyboard, wherever the focus is. */
function useKeys(bench: Bench): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent): void => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
      const key = event.key.toLowerCase();
      if (key !== 'z' && key !== 'y') return;
      event.preventDefault();
      if (key === 'y' || event.shiftKey) bench.redo();
      else bench.undo();
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, [bench]);
}

/** The window is called what is on the sheet. */
function useTitle(bench: Bench): void {
  const name = bench.beside.value === 'drive' ? 'Drive numbers' : bench.row.value?.name;
  const job = bench.edits.job.value.name;
  useEffect(() => {
    document.title = name === undefined ? job : `${name}, ${job}`;
  }, [name, job]);
}

function Print() {
  return (
    <div class="frame">
      <DrawingArea />
      <TitleBlock />
      <div class="column">
        <Notes />
        <PlainList />
      </div>
    </div>
  );
}

export function App({ bench }: { readonly bench: Bench }) {
  useKeys(bench);
  useTitle(bench);
  const row = bench.row.value;
  const drive = bench.beside.value === 'drive';
  const label = drive ? 'Drive numbers' : row === undefined ? 'Empty job' : `Print of ${row.name}`;
  return (
    <BenchContext.Provider value={bench}>
      <div class="bench">
        <Rail />
        <main class="sheet" aria-label={label}>
          <Zones />
          <ConflictOnDemand />
          {drive ? <DriveOnDemand /> : row === undefined ? <Empty /> : <Print key={row.id} />}
        </main>
      </div>
    </BenchContext.Provider>
  );
}
