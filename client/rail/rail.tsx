// The rail: the job, its prints by number, adding a part, and what acts on the whole job.
import { useSignal } from '@preact/signals';
import { writeRoute } from '../state/route.js';
import { theme, toggleTheme } from '../state/theme.js';
import { useBench } from '../state/bench-context.js';
import { SaveWords } from './save-words.js';

function Sheets() {
  const bench = useBench();
  const { id, rows } = bench.edits.job.value;
  return (
    <ul class="sheets">
      {rows.map((row, index) => (
        <li key={row.id}>
          <a href={writeRoute(id, row.id)} aria-current={row.id === bench.row.value?.id ? 'page' : undefined}>
            <span class="number">{index + 1}</span>
            {row.name}
          </a>
        </li>
      ))}
    </ul>
  );
}

function AddPart() {
  const bench = useBench();
  const open = useSignal(false);
  return (
    <>
      <button type="button" aria-expanded={open.value} onClick={() => (open.value = !open.value)}>
        Add a part
      </button>
      {open.value && (
        <div class="families">
          {bench.families.map((family) => (
            <button
              key={family.id}
              type="button"
              onClick={() => {
                bench.addPart(family);
                open.value = false;
              }}
            >
              {family.title}
              <span class="small">{family.summary}</span>
            </button>
          ))}
        </div>
      )}
    </>
  );
}

function Units() {
  const bench = useBench();
  const { unit } = bench.edits.job.value;
  return (
    <div class="pair" role="group" aria-label="Unit of the job">
      <button type="button" aria-pressed={unit === 'mm'} onClick={() => bench.setUnit('mm')}>
        mm
      </button>
      <button type="button" aria-pressed={unit === 'in'} onClick={() => bench.setUnit('in')}>
        in
      </button>
    </div>
  );
}

export function Rail() {
  const bench = useBench();
  const { edits } = bench;
  const undo = edits.canUndo.value;
  const redo = edits.canRedo.value;
  return (
    <header class="rail">
      <h1 class="heard-only">{edits.job.value.name}</h1>
      <input
        class="job-name"
        aria-label="Job name"
        value={edits.job.value.name}
        maxLength={200}
        autocomplete="off"
        onInput={(event) => bench.renameJob(event.currentTarget.value)}
        onBlur={(event) => {
          edits.endVisit();
          event.currentTarget.value = edits.job.value.name;
        }}
      />
      <nav aria-label="Sheets">
        <Sheets />
        <hr />
        <AddPart />
        {bench.row.value !== undefined && (
          <button type="button" onClick={() => bench.duplicate()}>
            Duplicate
          </button>
        )}
        {edits.job.value.rows.length > 1 && (
          <button type="button" onClick={() => bench.remove()}>
            Remove
          </button>
        )}
      </nav>
      <div class="tools">
        <button
          type="button"
          title={undo ?? 'Nothing to undo'}
          disabled={!bench.canUndo.value}
          onClick={() => bench.undo()}
        >
          Undo
        </button>
        <button
          type="button"
          title={redo ?? 'Nothing to redo'}
          disabled={redo === undefined}
          onClick={() => bench.redo()}
        >
          Redo
        </button>
        <Units />
        <button type="button" onClick={toggleTheme}>
          {theme.value === 'dark' ? 'Light' : 'Dark'}
        </button>
        <p class="saved" role="status">
          <SaveWords />
        </p>
      </div>
    </header>
  );
}
