// The line of a drawing in the plain list: where it is from, bringing another one in, what is done along its layers.
import { useSignal, type Signal } from '@preact/signals';
import { DRAWING_UNITS, type DrawingOptions, type ReadDrawing } from '../../parts-library/files/index.js';
import type { Finding } from '../../parts-library/model/index.js';
import type { FieldView } from '../state/field-views.js';
import { useBench } from '../state/bench-context.js';
import { readFileInHand, takeUp, type DrawingFile } from '../state/bring-in.js';
import { isDrawing } from '../state/drawing-edits.js';
import { DrawingLayers } from './drawing-layers.js';

/** A file in hand and what it was read as. */
interface InHand {
  readonly file: DrawingFile;
  readonly options: DrawingOptions;
  readonly value: ReadDrawing | undefined;
  readonly findings: readonly Finding[];
}

/** Says what reading left to be known or mended; notes stand among the part's own. */
function Said({ inHand }: { readonly inHand: InHand }) {
  const says = inHand.findings.filter(({ level }) => level === 'stop' || level === 'caution');
  return (
    <>
      {says.map(({ code, title, says: why }) => (
        <p key={code + title} class={code === 'unreadable-drawing' ? 'problem' : 'small'}>
          {title}. {why}
        </p>
      ))}
    </>
  );
}

/** What can be said about a file that is in hand: its unit, and which of several parts. */
function ReadAgain({
  inHand,
  read,
}: {
  readonly inHand: InHand;
  readonly read: (options: DrawingOptions) => void;
}) {
  const { options, value } = inHand;
  const parts = value?.parts ?? [];
  return (
    <>
      <div class="field kind-choice">
        <label for="drawing-unit">Numbers in the file</label>
        <select
          id="drawing-unit"
          value={options.unit ?? ''}
          onChange={(event) => {
            const unit = event.currentTarget.value;
            const { unit: _before, ...rest } = options;
            read(unit === '' ? rest : { ...rest, unit });
          }}
        >
          <option value="">as it says</option>
          {[...DRAWING_UNITS.keys()].map((unit) => (
            <option key={unit} value={unit}>
              {unit}
            </option>
          ))}
        </select>
      </div>
      {parts.length > 1 && (
        <div class="field kind-choice">
          <label for="drawing-part">Part in the file</label>
          <select
            id="drawing-part"
            value={options.part ?? 1}
            onChange={(event) => read({ ...options, part: Number(event.currentTarget.value) })}
          >
            {parts.map(({ number, width, height }) => (
              <option key={number} value={number}>
                {number}: {Number(width.toFixed(1))} × {Number(height.toFixed(1))} mm
              </option>
            ))}
          </select>
        </div>
      )}
    </>
  );
}

function BringIn({ path, id }: { readonly path: string; readonly id: string }) {
  const bench = useBench();
  const inHand: Signal<InHand | undefined> = useSignal(undefined);
  const refused = useSignal<string | undefined>(undefined);

  const read = async (file: DrawingFile, options: DrawingOptions): Promise<void> => {
    const answer = await readFileInHand(file, options);
    if (typeof answer === 'string') {
      refused.value = answer;
      return;
    }
    const { value, findings } = answer;
    inHand.value = { file, options, value, findings };
    if (value !== undefined) bench.setDrawing(path, value.drawing);
  };
  const choose = async (file: File | undefined): Promise<void> => {
    if (file === undefined) return;
    const taken = await takeUp(file);
    refused.value = typeof taken === 'string' ? taken : undefined;
    if (typeof taken !== 'string') await read(taken, {});
  };
  const current = inHand.value;
  return (
    <div class="bring-in">
      <label class="button" for={id}>
        Bring in a drawing
      </label>
      <input
        id={id}
        type="file"
        accept=".dxf,.svg,image/svg+xml,image/vnd.dxf"
        aria-describedby={`${id}-said`}
        onChange={(event) => {
          const { currentTarget } = event;
          void choose(currentTarget.files?.[0]).then(() => {
            // The same file, mended, may be chosen again.
            currentTarget.value = '';
          });
        }}
      />
      <div id={`${id}-said`} role="status">
        {refused.value !== undefined && <p class="problem">{refused.value}</p>}
        {current !== undefined && <Said inHand={current} />}
      </div>
      {current !== undefined && (
        <ReadAgain inHand={current} read={(options) => void read(current.file, options)} />
      )}
    </div>
  );
}

export function DrawingRow({ view, id }: { readonly view: FieldView; readonly id: string }) {
  const { field, problem, isStart, value } = view;
  const drawing = isDrawing(value) ? value : undefined;
  return (
    <div class={`drawing-row${problem === undefined ? '' : ' broken'}`}>
      {drawing !== undefined && (
        <p>
          {drawing.source.name}, numbers in {drawing.source.unit}
          {isStart && <span class="small"> until you bring in your own</span>}
        </p>
      )}
      <BringIn path={field.path} id={id} />
      <p class="problem" id={`${id}-problem`} role="status">
        {problem}
      </p>
      {drawing !== undefined && <DrawingLayers path={field.path} drawing={drawing} />}
    </div>
  );
}
