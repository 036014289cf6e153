// Taking files: finished size or cut path, as DXF or SVG, the print, and the command that makes the same.
import { useSignal } from '@preact/signals';
import { overrideFinding } from '../../parts-library/job/index.js';
import { download, makeFile, openStops, type FileChoice } from '../state/files.js';
import { useBench } from '../state/bench-context.js';
import { writeCommand } from './command-line.js';

const numbersOf = (notes: readonly { readonly number: number }[]): string =>
  notes.map(({ number }) => number).join(', ');

/** A stop withholds the files until somebody takes it upon themselves and says why. */
function Withheld() {
  const bench = useBench();
  const reason = useSignal('');
  const stops = openStops(bench.print.notes.value, bench.edits.job.value);
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
        <strong>Files withheld</strong> by {stops.length === 1 ? 'stop' : 'stops'} {numbersOf(stops)}.
      </p>
      <div class="accept">
        <label for="accept-reason">To take them all the same, say why</label>
        <input
          id="accept-reason"
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
      </div>
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
    const command = writeCommand(family.id, family.fields, row.parameters);
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

function Kind(props: {
  readonly title: string;
  readonly kind: FileChoice['kind'];
  readonly take: (choice: FileChoice) => void;
  readonly disabled: boolean;
}) {
  const { title, kind, take, disabled } = props;
  return (
    <div class="kind" role="group" aria-label={title}>
      <h3>{title}</h3>
      <button
        type="button"
        class={kind === 'cut' ? 'strong' : ''}
        disabled={disabled}
        onClick={() => take({ kind, format: 'dxf' })}
      >
        DXF<span class="heard-only"> {title}</span>
      </button>
      <button type="button" disabled={disabled} onClick={() => take({ kind, format: 'svg' })}>
        SVG<span class="heard-only"> {title}</span>
      </button>
    </div>
  );
}

export function Downloads() {
  const bench = useBench();
  const dxf = useSignal<'r12' | 'r2000'>('r12');
  const unit = useSignal<'mm' | 'in'>('mm');
  const says = useSignal('');
  const run = bench.print.run.value;
  const job = bench.edits.job.value;
  const row = bench.row.value;
  const stops = openStops(bench.print.notes.value, job);
  const broken = bench.print.brokenSays.value !== undefined;
  const take = (choice: FileChoice): void => {
    if (run === undefined || row === undefined) return;
    const made = makeFile(run, choice, {
      dxf: dxf.value,
      unit: unit.value,
      baseName: row.name,
      accepted: stops.length === 0,
    });
    if (made.ok) download(made.file);
    says.value = made.ok ? `${made.file.name} written` : made.says;
  };
  return (
    <section class="downloads" aria-label="Files">
      {stops.length > 0 && !broken && <Withheld />}
      {broken && <p class="withheld">Files are written again when every entry is understood.</p>}
      <div class="kinds">
        <Kind title="Finished size" kind="finished" take={take} disabled={broken || stops.length > 0} />
        <Kind title="Cut path" kind="cut" take={take} disabled={broken || stops.length > 0} />
      </div>
      <div class="options">
        <label>
          DXF{' '}
          <select
            value={dxf.value}
            onChange={(event) => (dxf.value = event.currentTarget.value === 'r2000' ? 'r2000' : 'r12')}
          >
            <option value="r12">R12</option>
            <option value="r2000">R2000</option>
          </select>
        </label>
        <label>
          in{' '}
          <select
            value={unit.value}
            aria-label="Unit of the DXF"
            onChange={(event) => (unit.value = event.currentTarget.value === 'in' ? 'in' : 'mm')}
          >
            <option value="mm">mm</option>
            <option value="in">inches</option>
          </select>
        </label>
        <button
          type="button"
          class="quiet"
          disabled={broken || stops.length > 0}
          onClick={() => take({ kind: 'print', format: 'svg' })}
        >
          Print SVG
        </button>
        <CopyCommand />
      </div>
      <p class="heard-only" role="status">
        {says.value}
      </p>
    </section>
  );
}
