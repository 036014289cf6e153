// How a pattern was measured: choosing another way rewrites the entry to what the caliper would read.
import type { FieldView } from '../state/field-views.js';
import { useBench } from '../state/bench-context.js';
import { groupOf, isObject, plainText, valueAt } from '../state/values.js';
import { measuredAs, wayOf, waysFor } from './measured-as.js';

/** Hole size to start from when the part has no hole yet, mm: an M10 clearance hole. */
const USUAL_HOLE = 11;

export function WaySelect({ view, id }: { readonly view: FieldView; readonly id: string }) {
  const bench = useBench();
  const { field, value } = view;
  const group = groupOf(field.path);
  const holeCount = Number(
    plainText(valueAt(bench.print.understood.value, group === '' ? 'bolts' : `${group}.bolts`)),
  );
  const metric = isObject(value) ? plainText(value['metric']) : '';
  const ways = waysFor(holeCount);
  const now = wayOf(metric) ?? '';
  const choose = (tag: string): void => {
    const features = bench.print.good.peek()?.value?.part.features ?? [];
    const holes = features.flatMap((feature) =>
      'hole' in feature && feature.hole !== undefined ? [feature.hole.size] : [],
    );
    const text = measuredAs(metric, tag, {
      holeCount,
      hole: holes[0] ?? USUAL_HOLE,
      unit: bench.edits.job.peek().unit,
    });
    if (text === undefined) return;
    bench.type(field.path, text);
    bench.leave(field.path);
  };
  return (
    <div class="way">
      <label for={id}>measured as</label>
      <select id={id} value={now} onChange={(event) => choose(event.currentTarget.value)}>
        {!ways.some(({ tag }) => tag === now) && <option value={now}>as typed</option>}
        {ways.map(({ tag, label }) => (
          <option key={tag} value={tag}>
            {label}
          </option>
        ))}
      </select>
    </div>
  );
}
