// Taking files: finished size or cut path, as DXF or SVG, the print, and the command that makes the same.
import { useSignal, type Signal } from '@preact/signals';
import { overrideFinding } from '../../parts-library/job/index.js';
import { download, makeFile, openStops, type FileChoice } from '../state/files.js';
import type { NumberedNote } from '../state/print.js';
import { useBench } from '../state/bench-context.js';
import { understoodOf } from '../state/turn-unit.js';

/** `1 to 3` or `1, 4`. */
function numbersOf(notes: readonly NumberedNote[]): string {
  const numbers = notes.map(({ number }) => number);
  const [first = 0] = numbers;
  const inARow = numbers.length > 2 && numbers.every((number, index) => number === first + index);
  return inARow ? `${first} to ${first + numbers.length - 1}` : numbers.join(', ');
}

/** A stop withholds the files until somebody takes it upon themselves and says why. */
function Withheld({ broken, stops }: { readonly broken: boolean; readonly stops: readonly NumberedNote[] }) {
  const bench = useBench();
  const reason = useSignal('');
  if (broken) return <p class="withheld">Files are written again when the part can be drawn as typed.</p>;
  return (
    <form
      class="withheld"
      onSubmit={(event) => {
        event.preventDefault();
        const date = new Date().toISOString().slice(0, 10);
        for (const { finding } of stops) {
          bench.edits.make(() => overrideFinding(finding, { reason: reason.value.trim(), date }));
        }
      }}
    >
      <p>
        <strong>Files withheld</strong> by {stops.length === 1 ? 'stop' : 'stops'} {numbersOf(stops)}. To take
        them all the same, say why:
      </p>
      <input
        aria-label="Why the stops are accepted"
        value={reason.value}
        maxLength={200}
        autocomplete="off"
        onInput={(event) => {
          reason.value = event.currentTarget.value;
        }}
      />
      <button type="submit" disabled={reason.value.trim() === ''}>
        Accept {numbersOf(stops)}
      </button>
    </form>
  );
}

function CopyCommand() {
  const bench = useBench();
  const says = useSignal('Copy as command');
  const copy = async (): Promise<void> => {
    const row = bench.row.value;
    const family = bench.family.value;
    if (row === undefined || family === undefined) return;
    // Fetched when it is wanted: few copy the command.
    const { writeCommand } = await import('./command-line.js');
    const command = writeCommand({
      family,
      row,
      entered: understoodOf(row.parameters, bench.print.understood.peek()),
      unit: bench.edits.job.peek().unit,
      process: bench.cut.given.peek(),
    });
    try {
      await navigator.clipboard.writeText(command);
      says.value = 'Command copied';
    } catch {
      says.value = command;
    }
  };
  return (
    <button
      type="button"
      class="quiet"
      onClick={() => void copy()}
      onBlur={() => (says.value = 'Copy as command')}
    >
      {says.value}
    </button>
  );
}

function Options({ form }: { readonly form: Signal<string> }) {
  return (
    <div class="options">
      <label>
        DXF as{' '}
        <select value={form.value} onChange={(event) => (form.value = event.currentTarget.value)}>
          <option value="r12 mm">R12, mm</option>
          <option value="r12 in">R12, inches</option>
          <option value="r2000 mm">R2000, mm</option>
          <option value="r2000 in">R2000, inches</option>
        </select>
      </label>
      <CopyCommand />
    </div>
  );
}

function Kind(props: {
  readonly title: string;
  readonly kind: FileChoice['kind'];
  readonly formats: readonly FileChoice['format'][];
  readonly take: (choice: FileChoice) => void;
  readonly disabled: boolean;
}) {
  const { title, kind, formats, take, disabled } = props;
  return (
    <div class="kind" role="group" aria-label={title}>
      <h3>{title}</h3>
      {formats.map((format) => (
        <button
          key={format}
          type="button"
          class={kind === 'cut' && format === 'dxf' ? 'strong' : ''}
          aria-label={`${title}, ${format.toUpperCase()}`}
          disabled={disabled}
          onClick={() => take({ kind, format })}
        >
          {format.toUpperCase()}
        </button>
      ))}
    </div>
  );
}

export function Downloads() {
  const bench = useBench();
  const form = useSignal('r12 mm');
  const says = useSignal('');
  const job = bench.edits.job.value;
  const row = bench.row.value;
  const stops = openStops(bench.print.notes.value, job);
  const broken = bench.print.brokenSays.value !== undefined;
  const withheld = broken || stops.length > 0;
  const take = (choice: FileChoice): void => {
    const run = bench.print.run.peek();
    if (run === undefined || row === undefined) return;
    const made = makeFile(run, choice, {
      dxf: form.value.startsWith('r2000') ? 'r2000' : 'r12',
      unit: form.value.endsWith('in') ? 'in' : 'mm',
      baseName: row.name,
      accepted: stops.length === 0,
    });
    if (made.ok) download(made.file);
    says.value = made.ok ? `${made.file.name} written` : made.says;
  };
  return (
    <section class="downloads" aria-label="Files">
      <div class="kinds">
        <Kind
          title="Finished size"
          kind="finished"
          formats={['dxf', 'svg']}
          take={take}
          disabled={withheld || !bench.ready.value}
        />
        <Kind
          title="Cut path"
          kind="cut"
          formats={['dxf', 'svg']}
          take={take}
          disabled={withheld || !bench.ready.value}
        />
        <Kind
          title="Print"
          kind="print"
          formats={['svg']}
          take={take}
          disabled={withheld || !bench.ready.value}
        />
      </div>
      {withheld ? <Withheld broken={broken} stops={stops} /> : <Options form={form} />}
      <p class="heard-only" role="status">
        {says.value}
      </p>
    </section>
  );
}
