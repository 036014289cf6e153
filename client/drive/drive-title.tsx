// The foot of the drive's sheet: what it is, its main numbers, and the command that counts the same.
import { useSignal } from '@preact/signals';
import { driveReader, type DriveNumbers } from '../../parts-library/drive/index.js';
import type { JsonObject } from '../../parts-library/model/index.js';
import { fieldText } from '../list/field-text.js';
import { SaveWords } from '../rail/save-words.js';
import { flag, flagOf } from '../sheet/command-line.js';
import { useBench } from '../state/bench-context.js';
import { valueAt } from '../state/values.js';

/** Main numbers by figure, with the words of a title block. */
const CELLS = [
  ['ratio', 'Ratio'],
  ['road-speed', 'Road speed'],
  ['centres', 'Centres'],
  ['chain-pull', 'Chain pull'],
  ['grade-torque', 'Climbs'],
] as const;

/** `npx fishplate drive --motor-teeth 12 …`: what was entered, starting values left out. */
export function driveCommand(entered: JsonObject, unit: 'mm' | 'in'): string {
  const flags = driveReader.fields.flatMap((field) => {
    const text = fieldText(field, valueAt(entered, field.path), unit);
    return text === '' ? [] : [flag(flagOf(field.path), text)];
  });
  return ['npx fishplate drive', ...(unit === 'in' ? ['--unit in'] : []), ...flags].join(' ');
}

function CopyCommand() {
  const { edits } = useBench();
  const says = useSignal('Copy as command');
  const copy = async (): Promise<void> => {
    const { drive = {}, unit } = edits.job.peek();
    const command = driveCommand(drive, unit);
    try {
      await navigator.clipboard.writeText(command);
      says.value = 'Command copied';
    } catch {
      says.value = command;
    }
  };
  return (
    <button type="button" onClick={() => void copy()} onBlur={() => (says.value = 'Copy as command')}>
      {says.value}
    </button>
  );
}

export function DriveTitle({ numbers }: { readonly numbers: DriveNumbers }) {
  const { edits } = useBench();
  const { name, unit } = edits.job.value;
  return (
    <section class="title-block drive-title" aria-label="Title block">
      <dl>
        <div class="cell cell-part">
          <dt>Drive</dt>
          <dd>
            <span class="drive-name">{name}</span>
            <span class="small">
              lengths in {unit}
              <span class="save-aside">
                , <SaveWords />
              </span>
            </span>
          </dd>
        </div>
        <div class="cell">
          <dt>Chain</dt>
          <dd>{numbers.chain?.name ?? 'not known'}</dd>
        </div>
        {CELLS.map(([id, label]) => (
          <div key={id} class="cell">
            <dt>{label}</dt>
            <dd>
              {numbers.figures.find((figure) => figure.id === id)?.text.split(/ new,/)[0] ?? 'not known'}
            </dd>
          </div>
        ))}
      </dl>
      <div class="drive-take">
        <CopyCommand />
      </div>
    </section>
  );
}
