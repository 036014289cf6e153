// The rail: the job, its prints by number, adding a part, and what acts on the whole job.
import { useSignal, type Signal } from '@preact/signals';
import { writeDriveRoute, writeRoute } from '../state/route.js';
import { theme, toggleTheme } from '../state/theme.js';
import { useBench } from '../state/bench-context.js';
import { Jobs } from './jobs.js';
import { SaveWords } from './save-words.js';

/** What is open below the list of sheets; one thing at a time. */
type Opened = 'families' | 'kits' | 'jobs' | undefined;

function Sheets() {
  const bench = useBench();
  const { id, rows } = bench.edits.job.value;
  const drive = bench.beside.value === 'drive';
  const shown = bench.row.value?.id;
  return (
    <ul class="sheets">
      {rows.map((row, index) => (
        <li key={row.id}>
          <a href={writeRoute(id, row.id)} aria-current={row.id === shown && !drive ? 'page' : undefined}>
            <span class="number">{index + 1}</span>
            {row.name}
          </a>
        </li>
      ))}
      <li>
        <a href={writeDriveRoute(id, shown)} aria-current={drive ? 'page' : undefined}>
          <span class="number" />
          Drive numbers
        </a>
      </li>
    </ul>
  );
}

function Families({ close }: { readonly close: () => void }) {
  const bench = useBench();
  return (
    <div class="choices">
      {bench.families.map((family) => (
        <button
          key={family.id}
          type="button"
          onClick={() => {
            void bench.addPart(family);
            close();
          }}
        >
          {family.title}
          <span class="small">{family.summary}</span>
        </button>
      ))}
    </div>
  );
}

function Kits({ close }: { readonly close: () => void }) {
  const { kit } = useBench();
  return (
    <div class="choices">
      {kit.kits.map((one) => (
        <button
          key={one.id}
          type="button"
          onClick={() => {
            void kit.add(one);
            close();
          }}
        >
          {one.title}
          <span class="small">{one.summary}</span>
        </button>
      ))}
    </div>
  );
}

function Opener(props: {
  readonly opened: Signal<Opened>;
  readonly what: Exclude<Opened, undefined>;
  readonly words: string;
}) {
  const { opened, what, words } = props;
  const open = opened.value === what;
  return (
    <button type="button" aria-expanded={open} onClick={() => (opened.value = open ? undefined : what)}>
      {words}
    </button>
  );
}

function Units() {
  const bench = useBench();
  const { unit } = bench.edits.job.value;
  return (
    <div class="pair" role="group" aria-label="Unit of the job">
      <button
        type="button"
        aria-pressed={unit === 'mm'}
        disabled={!bench.ready.value}
        onClick={() => bench.setUnit('mm')}
      >
        mm
      </button>
      <button
        type="button"
        aria-pressed={unit === 'in'}
        disabled={!bench.ready.value}
        onClick={() => bench.setUnit('in')}
      >
        in
      </button>
    </div>
  );
}

function JobName() {
  const { edits, renameJob } = useBench();
  return (
    <input
      class="job-name"
      aria-label="Job name"
      value={edits.job.value.name}
      maxLength={200}
      autocomplete="off"
      onInput={(event) => renameJob(event.currentTarget.value)}
      onBlur={(event) => {
        edits.endVisit();
        event.currentTarget.value = edits.job.value.name;
      }}
    />
  );
}

function Tools() {
  const bench = useBench();
  const { edits } = bench;
  const redo = edits.canRedo.value;
  return (
    <div class="tools">
      <button
        type="button"
        title={edits.canUndo.value ?? 'Nothing to undo'}
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
  );
}

export function Rail() {
  const bench = useBench();
  const opened = useSignal<Opened>(undefined);
  const close = (): void => {
    opened.value = undefined;
  };
  const { rows, name } = bench.edits.job.value;
  return (
    <header class="rail">
      <h1 class="heard-only">{name}</h1>
      <JobName />
      <nav aria-label="Sheets">
        <Sheets />
        <hr />
        <Opener opened={opened} what="families" words="Add a part" />
        <Opener opened={opened} what="kits" words="Add a kit" />
        {bench.row.value !== undefined && (
          <button type="button" onClick={() => bench.duplicate()}>
            Duplicate
          </button>
        )}
        {rows.length > 1 && (
          <button type="button" onClick={() => bench.remove()}>
            Remove
          </button>
        )}
        <Opener opened={opened} what="jobs" words="Other jobs" />
      </nav>
      {opened.value === 'families' && <Families close={close} />}
      {opened.value === 'kits' && <Kits close={close} />}
      {opened.value === 'jobs' && <Jobs close={close} />}
      <Tools />
    </header>
  );
}
